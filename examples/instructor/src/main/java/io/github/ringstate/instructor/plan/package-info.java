/** The commands {@code plan} and {@code brief}: a plan written down, and all of its sheets. */
@NullMarked
package io.github.ringstate.instructor.plan;

import org.jspecify.annotations.NullMarked;
