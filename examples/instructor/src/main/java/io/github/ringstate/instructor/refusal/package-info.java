/** Refusals: the one exception with which the tool says no, and its exit status. */
@NullMarked
package io.github.ringstate.instructor.refusal;

import org.jspecify.annotations.NullMarked;
