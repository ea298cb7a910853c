package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Quantity;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.jspecify.annotations.Nullable;

/**
 * How one number of a technique varies between people: a distribution, cut off at the parameter's
 * range. A value: equal to another of the same parameter and distribution.
 */
public final class Spread {

  /** Part of the message when a distribution lies outside the parameter's range. */
  public static final String NOTHING_WITHIN = " has no part of its spread within ";

  private final Parameter parameter;
  private final RealDistribution distribution;
  private final double below;
  private final double within;

  /**
   * Cuts a distribution off.
   *
   * @param parameter the number
   * @param distribution its distribution, in the parameter's own unit; some of it lies within the
   *     parameter's range
   */
  public Spread(Parameter parameter, RealDistribution distribution) {
    this.parameter = parameter;
    this.distribution = distribution;
    Quantity range = parameter.quantity();
    below = distribution.cumulativeProbability(range.low());
    within = distribution.cumulativeProbability(range.high()) - below;
    if (!(within > 0)) {
      throw new IllegalArgumentException(
          parameter.name()
              + NOTHING_WITHIN
              + range.low()
              + " to "
              + range.high()
              + " "
              + parameter.unit().symbol());
    }
  }

  /**
   * What varies.
   *
   * @return the number
   */
  public Parameter parameter() {
    return parameter;
  }

  /**
   * How it varies.
   *
   * @return the distribution, in the parameter's own unit, not cut off
   */
  public RealDistribution distribution() {
    return distribution;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Spread spread
        && parameter.equals(spread.parameter)
        && DistributionValue.of(distribution).equals(DistributionValue.of(spread.distribution));
  }

  @Override
  public int hashCode() {
    return 31 * parameter.hashCode() + DistributionValue.of(distribution).hashCode();
  }

  /** The parameter and its distribution, in the parameter's own unit. */
  @Override
  public String toString() {
    return parameter.key() + " " + DistributionValue.of(distribution);
  }

  /**
   * A normal distribution about the parameter's standard value.
   *
   * @param parameter the number
   * @param deviation the standard deviation, in the parameter's own unit; positive
   * @return the spread
   */
  public static Spread normal(Parameter parameter, double deviation) {
    if (!(deviation > 0)) {
      throw new IllegalArgumentException(
          "a standard deviation must be positive, not "
              + deviation
              + " "
              + parameter.unit().symbol());
    }
    return new Spread(parameter, new NormalDistribution(parameter.standard(), deviation));
  }

  /**
   * An even distribution.
   *
   * @param parameter the number
   * @param low the least value, in the parameter's own unit
   * @param high the greatest value, in the parameter's own unit
   * @return the spread
   */
  public static Spread even(Parameter parameter, double low, double high) {
    if (!(low < high)) {
      throw new IllegalArgumentException(
          "an even spread goes upward, not from " + low + " to " + high);
    }
    return new Spread(parameter, new UniformRealDistribution(low, high));
  }

  /**
   * The value of one person.
   *
   * @param uniform a number above 0 and below 1
   * @return the value, in the parameter's own unit and within its range
   */
  public double value(double uniform) {
    double low = parameter.quantity().low();
    double high = parameter.quantity().high();
    double value = distribution.inverseCumulativeProbability(below + within * uniform);
    // the inverse may miss the end of the range by its own accuracy
    return Math.min(Math.max(value, low), high);
  }
}
