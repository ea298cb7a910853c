/** Recordings. */
@NullMarked
package io.github.ringstate.recording;

import org.jspecify.annotations.NullMarked;
