/** The command {@code boundary}: between which rates of descent the ring state lies. */
@NullMarked
package io.github.ringstate.instructor.boundary;

import org.jspecify.annotations.NullMarked;
