package io.github.ringstate.quantity;

/**
 * Limits that are bent in over a width, so that what depends on them has continuous derivatives up
 * to the fourth. Beyond the width they are exact.
 *
 * <p>The bend is the integral, taken twice, of the bell 35/32 (1 - t^2)^3 on -1 &lt;= t &lt;= 1,
 * whose area is one. An integrator of high order crosses it without noticing much, and in bulk work
 * it costs a comparison where the limit is far: a root of the sum of two squares would cost the
 * root everywhere.
 */
public final class SoftLimit {

  private SoftLimit() {}

  /**
   * What of a quantity is above nothing: max(x, 0), rounded off.
   *
   * @param x the quantity
   * @param width half of the interval over which the corner is rounded off, positive, same unit
   * @return zero for x &lt;= -width, x for x &gt;= width; 35/256 of the width for x = 0; NaN for
   *     NaN
   */
  public static double positive(double x, double width) {
    if (x >= width) {
      return x;
    }
    if (x <= -width) {
      return 0;
    }
    return width * bend(x / width);
  }

  /**
   * The size of a quantity: |x|, rounded off.
   *
   * @param x the quantity
   * @param width half of the interval over which the corner is rounded off, positive, same unit
   * @return |x| for |x| &gt;= width, a little more below
   */
  public static double size(double x, double width) {
    return 2 * positive(x, width) - x;
  }

  /**
   * A quantity held within plus and minus a limit; the corners are rounded off from half of the
   * limit to once and a half of it.
   *
   * @param x the quantity
   * @param limit the limit, positive, same unit
   * @return x for |x| &lt;= limit / 2, 0.93 of the limit for |x| = limit, the limit from 1.5 times
   *     it on, with the sign of x; NaN for NaN
   */
  public static double within(double x, double limit) {
    double width = 0.5 * limit;
    double size = Math.abs(x);
    if (size <= width) {
      return x;
    }
    double held = size >= limit + width ? limit : size - width * bend((size - limit) / width);
    return Math.copySign(held, x);
  }

  private static double bend(double t) {
    double u = t * t;
    return 35.0 / 256 + 0.5 * t + 35.0 / 32 * u * (0.5 - 0.25 * u + u * u * (0.1 - 1.0 / 56 * u));
  }
}
