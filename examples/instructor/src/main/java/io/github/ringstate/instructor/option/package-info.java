/**
 * Options: what users type, read into values of the library.
 *
 * <p>Every option is taken as text and read here, so that each wrong value is refused in the same
 * words: the option, the value, what is allowed.
 */
@NullMarked
package io.github.ringstate.instructor.option;

import org.jspecify.annotations.NullMarked;
