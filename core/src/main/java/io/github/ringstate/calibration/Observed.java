package io.github.ringstate.calibration;

import java.util.Map;

/** Readings, and what a model says of them as a function of numbers. */
interface Observed {

  /** How many numbers belong to these readings alone. */
  int numbers();

  /** How many readings there are. */
  int size();

  /** The series to which each reading belongs. */
  Series[] series();

  /** The deviation of each series before any residual is known. */
  Map<Series, Double> deviations();

  /** What makes independent errors of variance 1 of those of each series. */
  Map<Series, Whitening> whitenings(Map<Series, Double> deviations);

  /**
   * The residuals: what was read less what the model says, whitened.
   *
   * @param values of the numbers that are asked for
   * @param normals those of these readings begin at an index
   * @param from that index
   * @param whitenings see {@link #whitenings}
   */
  double[] residuals(
      double[] values, double[] normals, int from, Map<Series, Whitening> whitenings);
}
