/**
 * Many pilots: who they are, what they lose, and in what words that is said. Shared by the commands
 * that fly simulated pilots.
 */
@NullMarked
package io.github.ringstate.instructor.pilots;

import org.jspecify.annotations.NullMarked;
