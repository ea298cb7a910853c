/**
 * Altitude losses of the demo craft with no, little and much power to spare, by the ring and the
 * engine of the first release and by those of today, and what of the lateral recovery's advantage
 * is its direction.
 *
 * <p>These are results of the model, side by side for a reader to judge; they check nothing.
 */
@NullMarked
package io.github.ringstate.validation.losses;

import org.jspecify.annotations.NullMarked;
