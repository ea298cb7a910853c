/** Delivery: a report goes to the terminal or, whole or not at all, to a file. */
@NullMarked
package io.github.ringstate.instructor.delivery;

import org.jspecify.annotations.NullMarked;
