/** Standard atmosphere, wind and gusts. */
@NullMarked
package io.github.ringstate.air;

import org.jspecify.annotations.NullMarked;
