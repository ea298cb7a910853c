package io.github.ringstate.study;

import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * A quantile of a sample with its confidence interval by order statistics: no distribution is
 * assumed.
 *
 * <p>The k-th smallest of n values lies below the true p-quantile exactly when at least k of the n
 * do, and that number is binomial (David and Nagaraja, <i>Order Statistics</i>, ch. 7; from
 * memory). The interval covers the true quantile with at least the given confidence.
 *
 * @param share the part of the population below the quantile, between 0 and 1
 * @param value the quantile of the sample; infinite if that part of the sample is not finite
 * @param low the lower end of the interval; minus infinity if the sample is too small for one
 * @param high the upper end of the interval; infinite if the sample is too small for one
 */
public record Quantile(double share, double value, double low, double high) {

  /**
   * Works a quantile out.
   *
   * @param sorted the sample in ascending order, at least one value; infinite values may stand at
   *     the end
   * @param share the part of the population below the quantile, between 0 and 1
   * @param confidence how sure the interval is, between 0 and 1
   * @return the quantile
   */
  public static Quantile of(double[] sorted, double share, double confidence) {
    double value = value(sorted, share);
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("a confidence lies between 0 and 1, not " + confidence);
    }
    int n = sorted.length;
    BinomialDistribution below = new BinomialDistribution(n, share);
    double tail = (1 - confidence) / 2;
    // P(k-th smallest > quantile) = P(fewer than k below) = P(B <= k - 1) <= tail, and the inverse
    // is the least number with more
    int k = below.inverseCumulativeProbability(tail);
    // P(m-th smallest < quantile) = P(at least m below) = 1 - P(B <= m - 1) <= tail, likewise
    int m = below.inverseCumulativeProbability(1 - tail) + 1;
    return new Quantile(
        share,
        value,
        k >= 1 ? sorted[k - 1] : Double.NEGATIVE_INFINITY,
        m <= n ? sorted[m - 1] : Double.POSITIVE_INFINITY);
  }

  /**
   * The quantile of a sample alone: the smallest of its values that has at least the given part of
   * them up to itself.
   *
   * @param sorted the sample in ascending order, at least one value
   * @param share the part, between 0 and 1
   * @return the value
   */
  public static double value(double[] sorted, double share) {
    if (sorted.length == 0) {
      throw new IllegalArgumentException("a quantile needs at least one value");
    }
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("a share lies between 0 and 1, not " + share);
    }
    return sorted[rank(sorted.length, share) - 1];
  }

  /**
   * Which value of a sample its quantile is.
   *
   * @param size the size of the sample, at least one
   * @param share the part, between 0 and 1
   * @return 1 for the least value, {@code size} for the greatest
   */
  public static int rank(int size, double share) {
    // the product may exceed a whole number by its rounding: 100 times 0.07 does
    return Math.max((int) Math.ceil(size * share * (1 - 1e-14)), 1);
  }

  /**
   * Half the width of the interval: how finely the quantile is known.
   *
   * @return half the difference of its ends; infinite if one of them is
   */
  public double halfWidth() {
    return Double.isInfinite(high) || Double.isInfinite(low)
        ? Double.POSITIVE_INFINITY
        : 0.5 * (high - low);
  }

  /**
   * How finely the quantile is known, whether or not its interval has two ends.
   *
   * @return half the width of the interval, or the distance to the only end that it has; zero if it
   *     has none or the quantile is infinite
   */
  public double within() {
    if (Double.isInfinite(value) || (Double.isInfinite(low) && Double.isInfinite(high))) {
      return 0;
    }
    if (Double.isInfinite(high)) {
      return value - low;
    }
    return Double.isInfinite(low) ? high - value : halfWidth();
  }

  /**
   * The quantile of everything moved up.
   *
   * @param by how far
   * @return the moved quantile
   */
  public Quantile plus(double by) {
    return new Quantile(share, value + by, low + by, high + by);
  }

  /**
   * The same value with an interval that holds another one too, as for people and models both.
   *
   * @param other the other quantile
   * @return the quantile with the wider interval
   */
  public Quantile widenedBy(Quantile other) {
    return new Quantile(share, value, Math.min(low, other.low), Math.max(high, other.high));
  }

  /**
   * Whether the intervals of two quantiles have a value in common, so that the samples do not tell
   * them apart.
   *
   * @param other the other quantile
   * @return true if they overlap
   */
  public boolean overlaps(Quantile other) {
    return low <= other.high && other.low <= high;
  }
}
