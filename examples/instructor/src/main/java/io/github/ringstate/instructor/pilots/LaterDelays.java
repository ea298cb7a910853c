package io.github.ringstate.instructor.pilots;

import org.hipparchus.distribution.RealDistribution;

/**
 * Delays that are all longer by the same time.
 *
 * @param delays the delays, s
 * @param later by how much everybody acts later, s
 */
public record LaterDelays(RealDistribution delays, double later) implements RealDistribution {

  @Override
  public double probability(double low, double high) {
    return delays.probability(low - later, high - later);
  }

  @Override
  public double density(double delay) {
    return delays.density(delay - later);
  }

  @Override
  public double logDensity(double delay) {
    return delays.logDensity(delay - later);
  }

  @Override
  public double cumulativeProbability(double delay) {
    return delays.cumulativeProbability(delay - later);
  }

  @Override
  public double inverseCumulativeProbability(double share) {
    return later + delays.inverseCumulativeProbability(share);
  }

  @Override
  public double getNumericalMean() {
    return later + delays.getNumericalMean();
  }

  @Override
  public double getNumericalVariance() {
    return delays.getNumericalVariance();
  }

  @Override
  public double getSupportLowerBound() {
    return later + delays.getSupportLowerBound();
  }

  @Override
  public double getSupportUpperBound() {
    return later + delays.getSupportUpperBound();
  }

  @Override
  public boolean isSupportConnected() {
    return delays.isSupportConnected();
  }
}
