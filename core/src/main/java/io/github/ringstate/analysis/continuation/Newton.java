package io.github.ringstate.analysis.continuation;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.hipparchus.analysis.MultivariateVectorFunction;

/**
 * Newton's method for as many equations as unknowns, scaled so that one is a great change.
 *
 * @param solution where the equations hold
 * @param lastStep the length of the last step, an estimate of the error
 * @param steps how many steps it took
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to linear algebra
record Newton(double[] solution, double lastStep, int steps) {

  /** Step of the differences; derivatives are exact to about 1e-11. */
  private static final double DIFFERENCE = 1e-5;

  private static final int MOST_STEPS = 25;

  /** A step so short ends the search. */
  private static final double ENOUGH = 1e-12;

  /** Where steps grow no shorter by rounding, the last one must not be longer. */
  private static final double ACCEPTED = 1e-8;

  /** A longer step has left the neighbourhood. */
  private static final double ASTRAY = 3;

  /**
   * Solves equations.
   *
   * @param equations as many as unknowns
   * @param guess where to begin
   * @return the solution
   * @throws NoSolutionException if there is none nearby
   */
  static Newton solve(MultivariateVectorFunction equations, double[] guess) {
    double[] x = guess.clone();
    double[] differences = new double[x.length];
    Arrays.fill(differences, DIFFERENCE);
    double before = Double.POSITIVE_INFINITY;
    for (int i = 1; i <= MOST_STEPS; i++) {
      double[] step;
      try {
        step = solved(Slopes.of(equations, x, differences).values(), equations.value(x));
      } catch (IllegalArgumentException outside) {
        throw new NoSolutionException("the search left where the equations hold", outside);
      }
      double length = norm(step);
      if (!(length < ASTRAY)) {
        throw new NoSolutionException("Newton's method went astray");
      }
      for (int j = 0; j < x.length; j++) {
        x[j] -= step[j];
      }
      if (length < ENOUGH || (length < ACCEPTED && length >= 0.5 * before)) {
        return new Newton(x, length, i);
      }
      before = length;
    }
    throw new NoSolutionException("Newton's method did not converge in " + MOST_STEPS + " steps");
  }

  /**
   * Solves linear equations.
   *
   * @throws NoSolutionException if the matrix is singular
   */
  static double[] solved(DMatrixRMaj matrix, double[] right) {
    DMatrixRMaj x = new DMatrixRMaj(right.length, 1);
    if (!CommonOps_DDRM.solve(matrix, DMatrixRMaj.wrap(right.length, 1, right.clone()), x)) {
      throw new NoSolutionException("the equations are singular");
    }
    return x.data;
  }

  static double norm(double[] vector) {
    double sum = 0;
    for (double component : vector) {
      sum += component * component;
    }
    return Math.sqrt(sum);
  }
}
