/** The command {@code fly}: the time history of one flight. */
@NullMarked
package io.github.ringstate.instructor.fly;

import org.jspecify.annotations.NullMarked;
