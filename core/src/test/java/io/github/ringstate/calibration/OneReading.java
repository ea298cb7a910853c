package io.github.ringstate.calibration;

import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * One reading that misses by a function of all unknowns.
 *
 * @param numbers how many of them belong to the reading
 * @param miss by how much it misses
 */
record OneReading(int numbers, ToDoubleFunction<double[]> miss) implements Observed {

  @Override
  public int size() {
    return 1;
  }

  @Override
  public Series[] series() {
    return new Series[] {Series.HEIGHT};
  }

  @Override
  public Map<Series, Double> deviations() {
    return Map.of(Series.HEIGHT, 1.0);
  }

  @Override
  public Map<Series, Whitening> whitenings(Map<Series, Double> deviations) {
    return Map.of();
  }

  @Override
  public double[] residuals(
      double[] values, double[] normals, int from, Map<Series, Whitening> whitenings) {
    return new double[] {miss.applyAsDouble(normals)};
  }
}
