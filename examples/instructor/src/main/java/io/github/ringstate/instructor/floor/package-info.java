/**
 * The command {@code floor}: from which height what share of the simulated pilots recovered, and
 * what to brief for a given height. It never calls a height safe.
 */
@NullMarked
package io.github.ringstate.instructor.floor;

import org.jspecify.annotations.NullMarked;
