/** Files that are written as a whole or not at all. */
@NullMarked
package io.github.ringstate.files.whole;

import org.jspecify.annotations.NullMarked;
