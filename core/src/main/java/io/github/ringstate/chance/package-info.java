/**
 * The random numbers of samples.
 *
 * <p>A sample, a pilot for instance, draws from a {@link io.github.ringstate.chance.RandomStream}
 * that depends on a seed and its number alone. {@link io.github.ringstate.chance.Drawing} says how
 * the samples lie to each other: each by itself ({@link
 * io.github.ringstate.chance.IndependentStream}), or evenly spread over all numbers that they draw
 * ({@link io.github.ringstate.chance.SobolStream}). Evenly spread samples give the same quantile
 * from a fraction of the flights where the result follows smoothly from a few of the numbers.
 */
@NullMarked
package io.github.ringstate.chance;

import org.jspecify.annotations.NullMarked;
