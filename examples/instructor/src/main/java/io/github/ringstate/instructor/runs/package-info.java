/** The command {@code runs}: a slow run over the ground, as for photographs, track by track. */
@NullMarked
package io.github.ringstate.instructor.runs;

import org.jspecify.annotations.NullMarked;
