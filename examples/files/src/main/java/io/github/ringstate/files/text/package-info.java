/** Numbers, ranges and lines of text, the same wherever people read them, and the caution. */
@NullMarked
package io.github.ringstate.files.text;

import org.jspecify.annotations.NullMarked;
