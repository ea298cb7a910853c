/**
 * The command {@code manual}: a craft of one's own from the numbers that a flight manual has, and
 * how the model meets what the manual says of hover, climb and autorotation.
 */
@NullMarked
package io.github.ringstate.instructor.manual;

import org.jspecify.annotations.NullMarked;
