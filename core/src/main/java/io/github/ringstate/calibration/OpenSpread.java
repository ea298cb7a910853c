package io.github.ringstate.calibration;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;

/**
 * The covariance of what is left open, by slopes across it in place of those at the minimum: a
 * number that matters only in part of a flight has a steep slope on one side and none on the other,
 * and the slope at one point makes it look known. Each direction of the covariance is tried one
 * standard deviation either way. Where the residuals bend between, so much is added to their own
 * errors (statistical linear regression: A. F. Garcia-Fernandez et al., Posterior linearization
 * filter: principles and implementation using sigma points, IEEE Transactions on Signal Processing
 * 63, 2015; from memory).
 */
final class OpenSpread {

  /** The directions depend on the covariance, and so it is worked out so often. */
  private static final int ROUNDS = 2;

  /** Residuals as great as this, in deviations, are those of a flight that cannot be flown. */
  private static final double UNFLOWN = 100;

  /** Shorter steps are tried until the flight can be flown, but none shorter than this. */
  private static final double SHORTEST = 0.05;

  private final Residuals residuals;
  private final double[] middle;
  private final double[] here;

  private OpenSpread(Residuals residuals, double[] middle) {
    this.residuals = residuals;
    this.middle = middle;
    here = residuals.computeValue(middle).toArray();
  }

  /**
   * The covariance.
   *
   * @param residuals the problem
   * @param middle the unknowns at the minimum
   * @param covariance theirs by the slopes there
   */
  static RealMatrix of(Residuals residuals, double[] middle, RealMatrix covariance) {
    OpenSpread spread = new OpenSpread(residuals, middle);
    RealMatrix known = covariance;
    for (int round = 0; round < ROUNDS; round++) {
      known = spread.across(known);
    }
    return known;
  }

  private RealMatrix across(RealMatrix known) {
    RealMatrix root = new CholeskyDecomposition(known, 1e-6, 0).getL();
    double[][] slopes = new double[here.length][middle.length];
    double[] variance = new double[here.length];
    for (int j = 0; j < middle.length; j++) {
      double step = 1;
      while (!tryBoth(root.getColumn(j), step, j, slopes, variance) && step > SHORTEST) {
        step /= 2;
      }
    }
    for (int i = 0; i < here.length; i++) {
      double weight = 1 / FastMath.sqrt(1 + variance[i]);
      for (int j = 0; j < middle.length; j++) {
        slopes[i][j] *= weight;
      }
    }
    RealMatrix all = MatrixUtils.createRealMatrix(slopes);
    RealMatrix inside =
        new CholeskyDecomposition(all.transposeMultiply(all), 1e-6, 0).getSolver().getInverse();
    RealMatrix spread = root.multiply(inside).multiplyTransposed(root);
    return spread.add(spread.transpose()).scalarMultiply(0.5);
  }

  /** The slopes along a direction, and what the bends in it add; false if it cannot be flown. */
  private boolean tryBoth(
      double[] direction, double step, int j, double[][] slopes, double[] variance) {
    double[] above = at(direction, step);
    double[] below = at(direction, -step);
    for (int i = 0; i < here.length; i++) {
      if (!(Math.max(Math.abs(above[i]), Math.abs(below[i])) < UNFLOWN) && step > SHORTEST) {
        return false;
      }
    }
    for (int i = 0; i < here.length; i++) {
      slopes[i][j] = (above[i] - below[i]) / (2 * step);
      double bend = (above[i] + below[i] - 2 * here[i]) / (step * step);
      variance[i] += bend * bend / 2;
    }
    return true;
  }

  private double[] at(double[] direction, double step) {
    double[] moved = middle.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] += step * direction[i];
    }
    return residuals.computeValue(moved).toArray();
  }
}
