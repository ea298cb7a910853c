/** The command {@code sweep}: many encounters, one row for each. */
@NullMarked
package io.github.ringstate.instructor.sweep;

import org.jspecify.annotations.NullMarked;
