package io.github.ringstate.analysis.continuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.ejml.data.DMatrixRMaj;
import org.hipparchus.analysis.MultivariateVectorFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Pseudo-arclength continuation: a step along the tangent of the curve, then Newton's method in the
 * plane across it. Steps become shorter where the curve bends or Newton's method finds no solution,
 * and longer again where it is straight.
 *
 * @param equations n equations in n unknowns and, last, a parameter
 * @param longestStep the longest step along the curve, positive, in the scaled unknowns
 * @param inside where the curve is of interest; it ends at the first point outside, which is kept
 * @param mostPoints how many points there may be at most, at least 2
 */
public record Continuation(
    MultivariateVectorFunction equations,
    double longestStep,
    Predicate<CurvePoint> inside,
    int mostPoints) {

  /** First step over the longest. */
  private static final double FIRST = 0.1;

  /** A step below this part of the longest ends the curve. */
  private static final double SHORTEST = 1e-6;

  /** Cosine of the angle by which the tangent may turn in a step: 15 degrees. */
  private static final double LEAST_COSINE = 0.966;

  /** So few of Newton's steps let the next step along the curve be longer. */
  private static final int EASY = 4;

  /** To what part of a step a turn of the parameter is located. */
  private static final double TURN_ACCURACY = 1e-6;

  private static final int MOST_LOOKS = 100;

  /** Checks the numbers. */
  public Continuation {
    if (!(longestStep > 0)) {
      throw new IllegalArgumentException("the step must be positive, not " + longestStep);
    }
    if (!(mostPoints >= 2)) {
      throw new IllegalArgumentException("a curve needs 2 points, not " + mostPoints);
    }
  }

  /**
   * Follows the curve from a point on it.
   *
   * @param guess unknowns and last the parameter; a solution for this parameter is looked for
   *     nearby
   * @param rising whether the parameter rises at first
   * @return the curve; it ends outside, at the greatest number of points, or where no solution
   *     follows
   * @throws NoSolutionException if there is no solution near the guess
   */
  public Curve follow(double[] guess, boolean rising) {
    int last = guess.length - 1;
    double parameter = guess[last];
    double[] start = Newton.solve(constrained(x -> x[last] - parameter), guess).solution();
    double[] up = new double[guess.length];
    up[last] = 1;
    double[] tangent = tangent(start, up);
    if (tangent[last] > 0 != rising) {
      tangent = scaled(tangent, -1);
    }
    List<CurvePoint> points = new ArrayList<>();
    List<CurvePoint> turns = new ArrayList<>();
    CurvePoint here = new CurvePoint(start, tangent);
    points.add(here);
    double step = FIRST * longestStep;
    while (points.size() < mostPoints && step > SHORTEST * longestStep) {
      CurvePoint there;
      int effort;
      try {
        Newton found = next(here, step);
        effort = found.steps();
        there = new CurvePoint(found.solution(), tangent(found.solution(), here.tangent()));
      } catch (NoSolutionException none) {
        step /= 2;
        continue;
      }
      if (!(dot(here.tangent(), there.tangent()) > LEAST_COSINE)) {
        step /= 2;
        continue;
      }
      if (here.turning() > 0 != there.turning() > 0) {
        turns.add(turn(here, step));
      }
      points.add(there);
      here = there;
      if (!inside.test(there)) {
        break;
      }
      step = effort <= EASY ? Math.min(1.5 * step, longestStep) : step;
    }
    return new Curve(points, turns);
  }

  /** The point of a step at which the parameter neither rises nor falls. */
  private CurvePoint turn(CurvePoint from, double step) {
    double length =
        new BracketingNthOrderBrentSolver(TURN_ACCURACY * step, TURN_ACCURACY * step, 5)
            .solve(MOST_LOOKS, part -> along(from, part).turning(), 0, step);
    return along(from, length);
  }

  private CurvePoint along(CurvePoint from, double step) {
    double[] place = step > 0 ? next(from, step).solution() : from.place();
    return new CurvePoint(place, tangent(place, from.tangent()));
  }

  private Newton next(CurvePoint from, double step) {
    double[] tangent = from.tangent();
    double[] predicted = from.place();
    for (int i = 0; i < predicted.length; i++) {
      predicted[i] += step * tangent[i];
    }
    Newton found =
        Newton.solve(constrained(x -> dot(tangent, x) - dot(tangent, predicted)), predicted);
    double[] moved = found.solution().clone();
    double[] place = from.place();
    for (int i = 0; i < moved.length; i++) {
      moved[i] -= place[i];
    }
    if (!(Newton.norm(moved) < 2 * step)) {
      throw new NoSolutionException("the solution found belongs to another part of the curve");
    }
    return found;
  }

  private interface Constraint {
    double value(double[] place);
  }

  /** The equations and one more that says where on the curve. */
  private MultivariateVectorFunction constrained(Constraint constraint) {
    return place -> {
      double[] values = equations.value(place);
      double[] all = Arrays.copyOf(values, values.length + 1);
      all[values.length] = constraint.value(place);
      return all;
    };
  }

  /** The unit vector along which the equations do not change, on the side of another. */
  private double[] tangent(double[] place, double[] along) {
    int n = place.length;
    double[] steps = new double[n];
    Arrays.fill(steps, 1e-5);
    DMatrixRMaj slopes = Slopes.of(equations, place, steps).values();
    DMatrixRMaj bordered = new DMatrixRMaj(n, n);
    for (int i = 0; i < n - 1; i++) {
      for (int j = 0; j < n; j++) {
        bordered.set(i, j, slopes.get(i, j));
      }
    }
    for (int j = 0; j < n; j++) {
      bordered.set(n - 1, j, along[j]);
    }
    double[] right = new double[n];
    right[n - 1] = 1;
    double[] tangent = Newton.solved(bordered, right);
    return scaled(tangent, 1 / Newton.norm(tangent));
  }

  private static double[] scaled(double[] vector, double by) {
    double[] scaled = vector.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= by;
    }
    return scaled;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
