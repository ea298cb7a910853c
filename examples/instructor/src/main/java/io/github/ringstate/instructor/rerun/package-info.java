/** The command {@code rerun}: makes a file again by what it says of its origin. */
@NullMarked
package io.github.ringstate.instructor.rerun;

import org.jspecify.annotations.NullMarked;
