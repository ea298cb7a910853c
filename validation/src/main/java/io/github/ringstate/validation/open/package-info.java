/**
 * What is not known of the model and of people, how far it moves the losses, and what it would be
 * worth to know it.
 *
 * <p>These are results of the model, and depend on what is thought of each open number at first;
 * they check nothing.
 */
@NullMarked
package io.github.ringstate.validation.open;

import org.jspecify.annotations.NullMarked;
