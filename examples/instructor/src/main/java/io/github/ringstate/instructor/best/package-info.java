/**
 * The command {@code best}: the least altitude loss that the model allows, and what recoveries lose
 * more.
 */
@NullMarked
package io.github.ringstate.instructor.best;

import org.jspecify.annotations.NullMarked;
