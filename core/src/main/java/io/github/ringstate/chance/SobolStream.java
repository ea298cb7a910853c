package io.github.ringstate.chance;

/**
 * Random numbers of one sample that are spread evenly together with those of other samples: a point
 * of the Sobol sequence, scrambled. The samples belong in turn to {@link #SETS} sets, each the
 * sequence scrambled anew and independently, so that the sets tell how far chance goes.
 *
 * <p>Scrambled is as Owen does it (<i>Randomly permuted (t,m,s)-nets and (t,s)-sequences</i>, in:
 * Monte Carlo and Quasi-Monte Carlo Methods in Scientific Computing, 1995): each binary digit is
 * flipped or not by a coin that depends on all digits before it. Every point is then uniform, and
 * the first 2^m points of a set stay a net. The digits behind the 31st are random.
 *
 * <p>Numbers beyond the {@value SobolSequence#DIMENSIONS}th, and every seed, are those of an {@link
 * IndependentStream}: gusts and shaking draw hundreds of numbers of about the same weight, among
 * which an even spread would gain nothing.
 */
public final class SobolStream implements RandomStream {

  /** Independent sets to which the samples belong in turn. */
  public static final int SETS = 8;

  /** How many samples there are, those of all sets together. */
  public static final long MOST = (long) SETS << SobolSequence.DIGITS;

  /** Keeps the coins apart from the numbers of independent samples of the same seed. */
  private static final long COINS = 0x636F696E73L;

  private final long key;
  private final int index;
  private final RandomStream beyond;
  private int dimension;

  /**
   * Begins the numbers of a sample.
   *
   * @param seed the seed of the whole study
   * @param sample the number of the sample, 0 to {@link #MOST} less 1; it belongs to the set of its
   *     remainder by {@link #SETS}
   */
  public SobolStream(long seed, long sample) {
    if (!(sample >= 0 && sample < MOST)) {
      throw new IllegalArgumentException("there is no sample " + sample + " among " + MOST);
    }
    key = Bits.of(seed ^ COINS, sample % SETS);
    index = (int) (sample / SETS);
    beyond = new IndependentStream(seed, sample);
  }

  @Override
  public double uniform() {
    if (dimension == SobolSequence.DIMENSIONS) {
      return beyond.uniform();
    }
    double value = scrambled(SobolSequence.digits(index, dimension), Bits.of(key, dimension));
    dimension++;
    return value;
  }

  /** The digits before a digit are the way to a node of a tree; at each node lies a coin. */
  private static double scrambled(int digits, long coins) {
    long node = 1;
    long flipped = 0;
    for (int place = SobolSequence.DIGITS - 1; place >= 0; place--) {
      int digit = (digits >>> place) & 1;
      flipped = (flipped << 1) | (digit ^ (Bits.at(coins, node) >>> 63));
      node = (node << 1) | digit;
    }
    long rest = Bits.at(coins, node) >>> (12 + SobolSequence.DIGITS);
    return (((flipped << (52 - SobolSequence.DIGITS)) | rest) + 0.5) * 0x1.0p-52;
  }

  @Override
  public long seed() {
    return beyond.seed();
  }
}
