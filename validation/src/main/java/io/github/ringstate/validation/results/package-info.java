/**
 * What the model says as a whole: losses against delay, mass and density altitude, with bands for
 * people and for the model, and how far each way out is from the least loss that a search finds.
 *
 * <p>These are results of the model, not checks. They take minutes, so that no build makes them;
 * the page that shows them names the command that does.
 */
@NullMarked
package io.github.ringstate.validation.results;

import org.jspecify.annotations.NullMarked;
