package io.github.ringstate.validation.catalogue;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * The ring-state model a second time, from the words of its documentation: roots of momentum theory
 * by EJML's eigenvalues, cubics by linear equations. Slow, and nothing of the library in it.
 */
final class RingStateAgain {

  private static final double ONSET = -0.5;
  private static final double ONSET_TOTAL = 0.90;
  private static final double EXIT = -1.45;
  private static final double EXIT_TOTAL = 1.25;
  private static final double UPPER = -0.8;
  private static final double LOWER = -2.3;
  private static final double FADE = 1.15;
  private static final double BLEND_START = 0.65;
  private static final double BLEND_END = 1.0;

  private RingStateAgain() {}

  /** Induced velocity, in hover induced velocities. */
  static double induced(double x, double z) {
    double total = smooth(x, z);
    if (z < 0 && z > LOWER && x < FADE) {
      double fade = Math.pow(1 - Math.pow(x / FADE, 4), 2);
      total += fade * (axial(z) - smooth(0, z));
    }
    return total - z;
  }

  /** Total inflow of momentum theory with its gap closed. */
  static double smooth(double x, double z) {
    if (z >= UPPER) {
      return z + largest(x, z);
    }
    if (z <= LOWER) {
      return z + smallest(x, z);
    }
    double low = smallest(x, LOWER);
    double high = largest(x, UPPER);
    double bridge =
        cubic(
            new double[] {LOWER, UPPER},
            new double[] {LOWER + low, UPPER + high},
            new double[] {slope(LOWER, low), slope(UPPER, high)},
            z);
    if (x <= BLEND_START) {
      return bridge;
    }
    double t = Math.min(1, (x - BLEND_START) / (BLEND_END - BLEND_START));
    double share = 10 * Math.pow(t, 3) - 15 * Math.pow(t, 4) + 6 * Math.pow(t, 5);
    return (1 - share) * bridge + share * (z + largest(x, z));
  }

  private static double axial(double z) {
    if (z > ONSET) {
      return rationalQuadratic(z);
    }
    if (z > EXIT) {
      return cubic(
          new double[] {EXIT, ONSET},
          new double[] {EXIT_TOTAL, ONSET_TOTAL},
          new double[] {0, 0},
          z);
    }
    double v = smallest(0, LOWER);
    return cubic(
        new double[] {LOWER, EXIT},
        new double[] {LOWER + v, EXIT_TOTAL},
        new double[] {slope(LOWER, v), 0},
        z);
  }

  /**
   * Gregory and Delbourgo's rational quadratic, IMA Journal of Numerical Analysis 2, 1982, between
   * the onset (slope 0) and hover (slope 1/2), in their form: with theta from 0 to 1, D the chord
   * and d the end slopes, f = f0 + (f1 - f0) [D theta^2 + d0 theta (1 - theta)] / [D + (d0 + d1 - 2
   * D) theta (1 - theta)].
   */
  private static double rationalQuadratic(double z) {
    double chord = (1 - ONSET_TOTAL) / (0 - ONSET);
    double theta = (z - ONSET) / (0 - ONSET);
    return ONSET_TOTAL
        + (1 - ONSET_TOTAL)
            * (chord * theta * theta)
            / (chord + (0.5 - 2 * chord) * theta * (1 - theta));
  }

  /** The cubic with two values and two slopes: four linear equations for its coefficients. */
  private static double cubic(double[] at, double[] values, double[] slopes, double z) {
    DMatrixRMaj matrix = new DMatrixRMaj(4, 4);
    DMatrixRMaj right = new DMatrixRMaj(4, 1);
    DMatrixRMaj c = new DMatrixRMaj(4, 1);
    for (int i = 0; i < 2; i++) {
      for (int power = 0; power < 4; power++) {
        matrix.set(i, power, Math.pow(at[i], power));
        matrix.set(2 + i, power, power == 0 ? 0 : power * Math.pow(at[i], power - 1));
      }
      right.set(i, 0, values[i]);
      right.set(2 + i, 0, slopes[i]);
    }
    if (!CommonOps_DDRM.solve(matrix, right, c)) {
      throw new IllegalStateException("a cubic has no coefficients");
    }
    return c.get(0) + z * (c.get(1) + z * (c.get(2) + z * c.get(3)));
  }

  private static double slope(double z, double v) {
    return 1 / (1 + (z + v) * Math.pow(v, 3));
  }

  private static double largest(double x, double z) {
    double[] roots = Polynomial.momentumByEigenvalues(x, z);
    return roots[roots.length - 1];
  }

  private static double smallest(double x, double z) {
    return Polynomial.momentumByEigenvalues(x, z)[0];
  }
}
