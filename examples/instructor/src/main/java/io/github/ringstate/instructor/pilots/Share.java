package io.github.ringstate.instructor.pilots;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A share of pilots with the interval in which the share among very many of them lies.
 *
 * @param value the share in the sample, 0 to 1
 * @param low the lower end of the interval
 * @param high the upper end of the interval
 */
public record Share(double value, double low, double high) {

  private static final double CONFIDENCE = 0.95;

  /**
   * The share of some among all, with Wilson's score interval (Wilson, Journal of the American
   * Statistical Association 22, 1927; from memory).
   *
   * @param some how many
   * @param all of how many; positive
   * @return the share, its interval with 95 per cent confidence
   */
  public static Share of(long some, long all) {
    double z = new NormalDistribution().inverseCumulativeProbability(0.5 + CONFIDENCE / 2);
    double n = all;
    double share = some / n;
    double middle = (share + z * z / (2 * n)) / (1 + z * z / n);
    double half = z / (1 + z * z / n) * Math.sqrt(share * (1 - share) / n + z * z / (4 * n * n));
    return new Share(
        share,
        // nobody and everybody are at the very end, where rounding may miss it
        some == 0 ? 0 : Math.max(0, middle - half),
        some == all ? 1 : Math.min(1, middle + half));
  }

  /**
   * The same share with an interval that takes another share in.
   *
   * @param other the other share
   * @return the share with the wider interval
   */
  Share with(double other) {
    return new Share(value, Math.min(low, other), Math.max(high, other));
  }

  /**
   * Whether two intervals have a value in common.
   *
   * @param other the other share
   * @return true if the samples do not tell the shares apart
   */
  public boolean overlaps(Share other) {
    return low <= other.high && other.low <= high;
  }
}
