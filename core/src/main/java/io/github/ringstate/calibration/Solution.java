package io.github.ringstate.calibration;

import io.github.ringstate.quantity.UncertainNumbers;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * The unknowns at which the weighted squares of all residuals are least, with their covariance.
 *
 * @param residuals the problem, weighed as at the end
 * @param unknown the unknowns
 * @param covariance their covariance
 */
@SuppressWarnings("ArrayRecordComponent") // of this package alone
record Solution(Residuals residuals, double[] unknown, RealMatrix covariance) {

  private static final int EVALUATIONS = 200;

  /** So many steps are enough for a start: along a bent valley the way to its end is long. */
  private static final int STEPS_OF_A_START = 200;

  /** A relative change of the sum of squares, and of the unknowns, that is none. */
  private static final double COST = 1e-5;

  private static final double UNKNOWN = 1e-4;
  private static final double ORTHOGONAL = 1e-8;

  /** Where the last of a demonstration's own unknowns starts, one after the other. */
  private static final double[] STARTS = {0, -1, 1, -2, 2};

  /** Weight of the readings at first, over what it is. */
  private static final double LITTLE = 0.01;

  /** Mean square of the residuals up to which a flight follows the readings. */
  private static final double FOLLOWS = 3;

  /** So often the readings are weighed anew. */
  private static final int ROUNDS = 3;

  /**
   * Solves.
   *
   * @param prior of the numbers asked for
   * @param demonstrations what they are fitted to
   * @param start where to start; empty where the unknowns of each demonstration are to be looked
   *     for first
   * @throws UnsupportedFitException if no minimum is found
   */
  static Solution of(
      UncertainNumbers prior, List<? extends Observed> demonstrations, double... start) {
    Residuals residuals = new Residuals(prior, demonstrations);
    double[] from = start.length > 0 ? start : oneByOne(prior, demonstrations, residuals);
    Solution solution = solve(residuals, from);
    for (int round = 0; round < ROUNDS; round++) {
      residuals.reweigh(solution.unknown(), solution.spent(demonstrations.size()));
      solution = solve(residuals, solution.unknown());
    }
    if (start.length == 0 && demonstrations.size() > 1) {
      solution = solution.lower();
    }
    return new Solution(
        residuals,
        solution.unknown(),
        OpenSpread.of(residuals, solution.unknown(), solution.covariance()));
  }

  /** The unknowns of each demonstration by itself, the numbers asked for near their middle. */
  private static double[] oneByOne(
      UncertainNumbers prior, List<? extends Observed> demonstrations, Residuals all) {
    double[] start = new double[all.unknowns()];
    int fixed = prior.parameters().size();
    for (int d = 0; d < demonstrations.size(); d++) {
      double[] found = alone(prior, demonstrations.get(d));
      System.arraycopy(found, fixed, start, all.firstUnknown(d), found.length - fixed);
      if (demonstrations.size() == 1) {
        System.arraycopy(found, 0, start, 0, fixed);
      }
    }
    return start;
  }

  /**
   * The unknowns of one demonstration. Readings count little at first, so that the way leads
   * through plausible flights; where the flight then found does not follow them, as when another
   * moment was taken for the pilot's movement, other starts are tried.
   */
  private static double[] alone(UncertainNumbers prior, Observed demonstration) {
    double[] best = new double[0];
    double least = Double.POSITIVE_INFINITY;
    for (double movement : STARTS) {
      Residuals residuals = new Residuals(prior, List.of(demonstration));
      double[] start = new double[residuals.unknowns()];
      start[residuals.firstUnknown(0) + demonstration.numbers() - 1] = movement;
      residuals.weigh(LITTLE);
      double[] rough = near(residuals, start, STEPS_OF_A_START).unknown();
      residuals.weigh(1);
      double[] found = near(residuals, rough, STEPS_OF_A_START).unknown();
      double norm = residuals.computeValue(found).getNorm();
      if (norm < least) {
        best = found;
        least = norm;
      }
      if (norm * norm < FOLLOWS * demonstration.size()) {
        break;
      }
    }
    return best;
  }

  /**
   * The lower of two minima. Hastes of the pilots may hold the numbers asked for far from the
   * lowest one; a way out is tried from the middle of those numbers.
   */
  private Solution lower() {
    double[] middle = unknown.clone();
    Arrays.fill(middle, 0, residuals.firstUnknown(0), 0);
    try {
      Solution other = solve(residuals, middle);
      return other.cost() < cost() ? other : this;
    } catch (UnsupportedFitException none) {
      return this;
    }
  }

  private double cost() {
    double norm = residuals.computeValue(unknown).getNorm();
    return norm * norm;
  }

  /** The minimum with the weights that the residuals have. */
  static Solution solve(Residuals residuals, double[] start) {
    return solve(residuals, start, Integer.MAX_VALUE, EVALUATIONS);
  }

  /** The minimum, or how near to it so many steps lead, however long they are looked for. */
  static Solution near(Residuals residuals, double[] start, int steps) {
    return solve(residuals, start, steps, Integer.MAX_VALUE);
  }

  private static Solution solve(Residuals residuals, double[] start, int steps, int evaluations) {
    try {
      Optimum optimum =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(COST)
              .withParameterRelativeTolerance(UNKNOWN)
              .withOrthoTolerance(ORTHOGONAL)
              .optimize(
                  new LeastSquaresBuilder()
                      .model(residuals)
                      .lazyEvaluation(true)
                      .target(new double[residuals.rows() + residuals.unknowns()])
                      .start(new ArrayRealVector(start))
                      .checker((step, before, after) -> step >= steps)
                      .maxEvaluations(evaluations)
                      .maxIterations(evaluations)
                      .build());
      RealMatrix jacobian = optimum.getJacobian();
      RealMatrix information = jacobian.transposeMultiply(jacobian);
      return new Solution(
          residuals,
          optimum.getPoint().toArray(),
          new CholeskyDecomposition(information, 1e-9, 0).getSolver().getInverse());
    } catch (MathRuntimeException none) {
      boolean endless = none.getSpecifier() == LocalizedCoreFormats.MAX_COUNT_EXCEEDED;
      throw new UnsupportedFitException(
          UnsupportedFitException.Reason.NO_MINIMUM,
          endless
              ? "the search was given up after " + evaluations + " tries"
              : "the search failed, " + none.getMessage());
    }
  }

  /**
   * The same with less weight for the readings: where a model does not follow them, its misfit is
   * no noise, and hangs together.
   *
   * @param chiSquare chi-square per degree of freedom, by which the information of the readings is
   *     divided; none is given for less than 1
   */
  Solution weakened(double chiSquare) {
    RealMatrix identity = MatrixUtils.createRealIdentityMatrix(unknown.length);
    RealMatrix readings = MatrixUtils.inverse(covariance).subtract(identity);
    RealMatrix left =
        MatrixUtils.inverse(readings.scalarMultiply(1 / Math.max(1, chiSquare)).add(identity));
    return new Solution(residuals, unknown, left.add(left.transpose()).scalarMultiply(0.5));
  }

  /** How many unknowns the readings of each demonstration have determined. */
  double[] spent(int demonstrations) {
    double[] spent = new double[demonstrations];
    double shared = determined(0, residuals.firstUnknown(0)) / demonstrations;
    for (int d = 0; d < demonstrations; d++) {
      int end = d + 1 < demonstrations ? residuals.firstUnknown(d + 1) : unknown.length;
      spent[d] = shared + determined(residuals.firstUnknown(d), end);
    }
    return spent;
  }

  /** What of a unit variance each of the prior the readings took away. */
  private double determined(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += 1 - covariance.getEntry(i, i);
    }
    return sum;
  }

  /** The numbers asked for, as they are known after the recordings. */
  UncertainNumbers posterior(UncertainNumbers prior) {
    int size = prior.parameters().size();
    RealMatrix root =
        new CholeskyDecomposition(MatrixUtils.createRealMatrix(prior.covariance()), 1e-9, 0).getL();
    double[] moved = root.operate(Arrays.copyOf(unknown, size));
    double[] mean = prior.mean();
    for (int i = 0; i < size; i++) {
      mean[i] += moved[i];
    }
    RealMatrix part = covariance.getSubMatrix(0, size - 1, 0, size - 1);
    RealMatrix spread = root.multiply(part).multiplyTransposed(root);
    RealMatrix symmetric = spread.add(spread.transpose()).scalarMultiply(0.5);
    return new UncertainNumbers(prior.parameters(), mean, symmetric.getData());
  }
}
