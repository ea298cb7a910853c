package io.github.ringstate.chance;

import java.util.SplittableRandom;

/**
 * Random numbers that have nothing to do with those of other samples.
 *
 * <p>The generator is {@link SplittableRandom}, whose algorithm (SplitMix64: Steele, Lea and Flood,
 * OOPSLA 2014) does not change between Java releases in practice; only its 64-bit outputs are used
 * and a test holds them.
 */
public final class IndependentStream implements RandomStream {

  private final SplittableRandom random;

  /**
   * Begins the numbers of a sample.
   *
   * @param seed the seed of the whole study
   * @param sample the number of the sample, from 0
   */
  public IndependentStream(long seed, long sample) {
    random = new SplittableRandom(Bits.of(seed, sample));
  }

  @Override
  public double uniform() {
    return ((random.nextLong() >>> 12) + 0.5) * 0x1.0p-52;
  }

  @Override
  public long seed() {
    return random.nextLong();
  }
}
