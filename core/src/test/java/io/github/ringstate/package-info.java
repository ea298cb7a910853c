/** Tests of the library as a whole. */
@NullMarked
package io.github.ringstate;

import org.jspecify.annotations.NullMarked;
