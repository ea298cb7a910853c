/** Short programs that use the library, each run by a test. */
@NullMarked
package io.github.ringstate.embedding;

import org.jspecify.annotations.NullMarked;
