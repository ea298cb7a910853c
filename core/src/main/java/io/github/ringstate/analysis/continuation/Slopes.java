package io.github.ringstate.analysis.continuation;

import org.ejml.data.DMatrixRMaj;
import org.hipparchus.analysis.MultivariateVectorFunction;

/**
 * The matrix of first derivatives of a vector function, by central differences with two steps.
 *
 * <p>The differences with the full and with half the step are extrapolated to a step of zero
 * (Richardson); how far the result lies from that of the half step is the estimate of its error.
 * Where a derivative jumps within the step, the error shows it.
 *
 * @param values the derivative of each value (row) by each argument (column)
 * @param errors an estimate of the error of each; not a bound
 */
public record Slopes(DMatrixRMaj values, DMatrixRMaj errors) {

  /**
   * The derivatives at a point.
   *
   * @param function the function
   * @param at the point
   * @param steps the step in each argument, positive
   * @return the derivatives
   */
  public static Slopes of(MultivariateVectorFunction function, double[] at, double[] steps) {
    int columns = at.length;
    DMatrixRMaj values = null;
    DMatrixRMaj errors = null;
    for (int j = 0; j < columns; j++) {
      if (!(steps[j] > 0)) {
        throw new IllegalArgumentException("a step must be positive, not " + steps[j]);
      }
      double[] full = difference(function, at, j, steps[j]);
      double[] half = difference(function, at, j, 0.5 * steps[j]);
      if (values == null || errors == null) {
        values = new DMatrixRMaj(full.length, columns);
        errors = new DMatrixRMaj(full.length, columns);
      }
      for (int i = 0; i < full.length; i++) {
        double correction = (half[i] - full[i]) / 3;
        values.set(i, j, half[i] + correction);
        errors.set(i, j, Math.abs(correction));
      }
    }
    if (values == null || errors == null) {
      throw new IllegalArgumentException("a function of nothing has no slopes");
    }
    return new Slopes(values, errors);
  }

  private static double[] difference(
      MultivariateVectorFunction function, double[] at, int argument, double step) {
    double[] above = at.clone();
    double[] below = at.clone();
    above[argument] += step;
    below[argument] -= step;
    double[] high = function.value(above);
    double[] low = function.value(below);
    double[] slopes = new double[high.length];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = (high[i] - low[i]) / (above[argument] - below[argument]);
    }
    return slopes;
  }
}
