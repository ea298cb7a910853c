package io.github.ringstate.analysis.continuation;

import org.hipparchus.analysis.MultivariateVectorFunction;

/**
 * What holds at a fold of F(y, a) = 0: the equations themselves, F_y p = 0 for a vector p, and p of
 * length one. The 2n + 1 unknowns are y, the parameter a, and p. Where F has a second parameter b,
 * it comes last, and folds can be followed in it.
 *
 * @param equations the equations F: n of them, in n unknowns, the parameter a and perhaps b
 * @param unknowns n, positive
 * @param step the step of the differences along p, positive
 */
public record FoldEquations(MultivariateVectorFunction equations, int unknowns, double step)
    implements MultivariateVectorFunction {

  /** The usual step. */
  public static final double STEP = 2e-6;

  /** Checks the numbers. */
  public FoldEquations {
    if (!(unknowns > 0 && step > 0)) {
      throw new IllegalArgumentException(
          "unknowns and step must be positive, not " + unknowns + " and " + step);
    }
  }

  @Override
  public double[] value(double[] place) {
    int n = unknowns;
    boolean second = place.length == 2 * n + 2;
    double[] at = new double[second ? n + 2 : n + 1];
    System.arraycopy(place, 0, at, 0, n + 1);
    if (second) {
      at[n + 1] = place[2 * n + 1];
    }
    double[] values = new double[2 * n + 1];
    System.arraycopy(equations.value(at), 0, values, 0, n);
    double[] full = along(at, place, step);
    double[] half = along(at, place, 0.5 * step);
    double length = -1;
    for (int i = 0; i < n; i++) {
      values[n + i] = half[i] + (half[i] - full[i]) / 3;
      length += place[n + 1 + i] * place[n + 1 + i];
    }
    values[2 * n] = 0.5 * length;
    return values;
  }

  private double[] along(double[] at, double[] place, double by) {
    double[] above = at.clone();
    double[] below = at.clone();
    for (int i = 0; i < unknowns; i++) {
      above[i] += by * place[unknowns + 1 + i];
      below[i] -= by * place[unknowns + 1 + i];
    }
    double[] high = equations.value(above);
    double[] low = equations.value(below);
    double[] slopes = new double[unknowns];
    for (int i = 0; i < unknowns; i++) {
      slopes[i] = (high[i] - low[i]) / (2 * by);
    }
    return slopes;
  }
}
