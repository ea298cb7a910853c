package io.github.ringstate.pilot;

import org.hipparchus.distribution.RealDistribution;

/**
 * A distribution as a value, which those of Hipparchus are not: equal to another of the same kind
 * with the same mean and variance. That holds for all kinds that two numbers say in full.
 *
 * @param kind the name of its class
 * @param mean its mean, in the unit of what is distributed
 * @param variance its variance, in the square of that unit
 */
public record DistributionValue(String kind, double mean, double variance) {

  /**
   * The value of a distribution.
   *
   * @param distribution the distribution
   * @return its kind and its two numbers
   */
  public static DistributionValue of(RealDistribution distribution) {
    return new DistributionValue(
        distribution.getClass().getSimpleName(),
        distribution.getNumericalMean(),
        distribution.getNumericalVariance());
  }

  /** The kind, the mean and the standard deviation. */
  @Override
  public String toString() {
    return kind + "(mean " + mean + ", standard deviation " + Math.sqrt(variance) + ")";
  }
}
