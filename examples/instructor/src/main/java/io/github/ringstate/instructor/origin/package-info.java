/** Origin: what a command was asked for and what it read, for the provenance of its files. */
@NullMarked
package io.github.ringstate.instructor.origin;

import org.jspecify.annotations.NullMarked;
