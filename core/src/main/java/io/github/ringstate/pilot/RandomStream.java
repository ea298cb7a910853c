package io.github.ringstate.pilot;

import java.util.SplittableRandom;

/**
 * Random numbers of one sample. They depend on the seed and the sample's number alone, so that a
 * sample can be flown again by itself, and a result does not depend on who computes which sample.
 *
 * <p>The generator is {@link SplittableRandom}, whose algorithm (SplitMix64: Steele, Lea and Flood,
 * OOPSLA 2014) does not change between Java releases in practice; only its 64-bit outputs are used
 * and a test holds them.
 */
public final class RandomStream {

  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private final SplittableRandom random;

  /**
   * Begins the numbers of a sample.
   *
   * @param seed the seed of the whole study
   * @param sample the number of the sample, from 0
   */
  public RandomStream(long seed, long sample) {
    random = new SplittableRandom(mixed(mixed(seed) + GOLDEN * (sample + 1)));
  }

  /**
   * The next number.
   *
   * @return uniform, above 0 and below 1
   */
  public double uniform() {
    return ((random.nextLong() >>> 12) + 0.5) * 0x1.0p-52;
  }

  /**
   * A seed for something that draws numbers of its own.
   *
   * @return any number
   */
  public long seed() {
    return random.nextLong();
  }

  /** The finaliser of MurmurHash3's 64-bit variant 13 (Stafford), as SplitMix64 uses it. */
  private static long mixed(long bits) {
    long z = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
