package io.github.ringstate.study;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * A part of a sample with its confidence interval: none of a thousand is not the same as never.
 *
 * <p>The interval is the exact one of Clopper and Pearson, Biometrika 26, 1934 (from memory): its
 * ends are the shares at which as many or more, and as few or fewer, would be as rare as the
 * confidence allows. It covers the true share with at least the given confidence.
 *
 * @param value the part of the sample, 0 to 1
 * @param low the lower end of the interval, 0 to 1
 * @param high the upper end of the interval, 0 to 1
 */
public record Share(double value, double low, double high) {

  /**
   * Works a share out.
   *
   * @param count how many of the sample, 0 to {@code size}
   * @param size the size of the sample, at least 1
   * @param confidence how sure the interval is, between 0 and 1
   * @return the share
   */
  public static Share of(int count, int size, double confidence) {
    if (!(size >= 1 && count >= 0 && count <= size)) {
      throw new IllegalArgumentException(
          "a share needs a count between 0 and a size of at least 1, not " + count + " of " + size);
    }
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("a confidence lies between 0 and 1, not " + confidence);
    }
    double tail = (1 - confidence) / 2;
    double low =
        count == 0
            ? 0
            : new BetaDistribution(count, size - count + 1.0).inverseCumulativeProbability(tail);
    double high =
        count == size
            ? 1
            : new BetaDistribution(count + 1.0, size - count)
                .inverseCumulativeProbability(1 - tail);
    return new Share((double) count / size, low, high);
  }

  /**
   * Whether the intervals of two shares have a value in common, so that the samples do not tell
   * them apart.
   *
   * @param other the other share
   * @return true if they overlap
   */
  public boolean overlaps(Share other) {
    return low <= other.high && other.low <= high;
  }
}
