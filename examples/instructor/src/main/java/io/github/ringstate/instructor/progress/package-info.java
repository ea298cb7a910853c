/** Progress: how far a long computation has come, shown to whoever waits at a terminal. */
@NullMarked
package io.github.ringstate.instructor.progress;

import org.jspecify.annotations.NullMarked;
