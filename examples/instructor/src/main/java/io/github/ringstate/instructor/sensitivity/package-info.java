/** The command {@code sensitivity}: which number the altitude loss depends on most. */
@NullMarked
package io.github.ringstate.instructor.sensitivity;

import org.jspecify.annotations.NullMarked;
