package io.github.ringstate.analysis.continuation;

import java.util.Arrays;
import org.hipparchus.analysis.MultivariateVectorFunction;

/** A fold of a curve of solutions: where the parameter turns back and two solutions meet. */
public final class Fold {

  private final double[] solution;
  private final int unknowns;
  private final double error;

  private Fold(double[] solution, int unknowns, double error) {
    this.solution = solution;
    this.unknowns = unknowns;
    this.error = error;
  }

  /**
   * Finds a fold.
   *
   * @param equations n equations in n unknowns and, last, a parameter
   * @param guess unknowns and last the parameter, near the fold
   * @param direction how the unknowns change along the curve there; of any length but zero
   * @return the fold
   * @throws NoSolutionException if there is none nearby
   */
  public static Fold near(
      MultivariateVectorFunction equations, double[] guess, double[] direction) {
    int n = guess.length - 1;
    double[] start = new double[2 * n + 1];
    System.arraycopy(guess, 0, start, 0, n + 1);
    double length = Newton.norm(Arrays.copyOf(direction, n));
    if (!(length > 0)) {
      throw new IllegalArgumentException("a direction has a length");
    }
    for (int i = 0; i < n; i++) {
      start[n + 1 + i] = direction[i] / length;
    }
    Newton fine = Newton.solve(new FoldEquations(equations, n, FoldEquations.STEP), start);
    Newton coarse =
        Newton.solve(new FoldEquations(equations, n, 4 * FoldEquations.STEP), fine.solution());
    double error = fine.lastStep();
    for (int i = 0; i <= n; i++) {
      error = Math.max(error, Math.abs(fine.solution()[i] - coarse.solution()[i]));
    }
    return new Fold(fine.solution(), n, error);
  }

  /**
   * One of the unknowns.
   *
   * @param index its place, from 0
   * @return its value
   */
  public double unknown(int index) {
    return solution[index];
  }

  /**
   * The parameter.
   *
   * @return its value, the greatest or least nearby
   */
  public double parameter() {
    return solution[unknowns];
  }

  /**
   * The solution of {@link FoldEquations}, to begin a curve of folds with.
   *
   * @return unknowns, parameter, null vector of length one; a new array
   */
  public double[] solution() {
    return solution.clone();
  }

  /**
   * An estimate of the error of every unknown and of the parameter: Newton's last step, or what a
   * longer step of the differences changes, whichever is more.
   *
   * @return the error in the scaled unknowns; not a bound
   */
  public double error() {
    return error;
  }
}
