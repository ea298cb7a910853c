package io.github.ringstate.calibration;

import org.hipparchus.util.FastMath;

/**
 * Takes the correlation out of errors: the inverse of the Cholesky root of their covariance, by
 * which independent errors of variance 1 become of them.
 */
final class Whitening {

  private final double[][] root;

  /**
   * Works out the root.
   *
   * @param covariance symmetric and positive definite; kept and overwritten
   */
  Whitening(double[][] covariance) {
    for (int i = 0; i < covariance.length; i++) {
      for (int j = 0; j <= i; j++) {
        double rest = covariance[i][j];
        for (int k = 0; k < j; k++) {
          rest -= covariance[i][k] * covariance[j][k];
        }
        if (i == j && !(rest > 0)) {
          throw new IllegalArgumentException("the covariance of the readings is not positive");
        }
        covariance[i][j] = i == j ? FastMath.sqrt(rest) : rest / covariance[j][j];
      }
    }
    root = covariance;
  }

  /** Whitens errors in their place. */
  void whiten(double[] errors, int from) {
    for (int i = 0; i < root.length; i++) {
      double rest = errors[from + i];
      for (int k = 0; k < i; k++) {
        rest -= root[i][k] * errors[from + k];
      }
      errors[from + i] = rest / root[i][i];
    }
  }
}
