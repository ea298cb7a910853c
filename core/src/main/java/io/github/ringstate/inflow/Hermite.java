package io.github.ringstate.inflow;

/**
 * The cubic through two points with given slopes there. Monotonic if the slopes have the sign of
 * the chord and neither exceeds three times its slope (Fritsch and Carlson, SIAM Journal on
 * Numerical Analysis 17, 1980).
 */
final class Hermite {

  private Hermite() {}

  /** The cubic's value at z, through (z0, w0) with slope m0 and (z1, w1) with slope m1. */
  static double value(double z0, double w0, double m0, double z1, double w1, double m1, double z) {
    double h = z1 - z0;
    double t = (z - z0) / h;
    double u = 1 - t;
    return w0 * u * u * (1 + 2 * t) + w1 * t * t * (3 - 2 * t) + h * t * u * (m0 * u - m1 * t);
  }

  /** The cubic's slope at z. */
  static double slope(double z0, double w0, double m0, double z1, double w1, double m1, double z) {
    double h = z1 - z0;
    double t = (z - z0) / h;
    double u = 1 - t;
    return 6 * (w1 - w0) / h * t * u + m0 * u * (1 - 3 * t) + m1 * t * (3 * t - 2);
  }
}
