package io.github.ringstate.study;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;

/**
 * How many pilots are flown, and when that is enough.
 *
 * <p>The interval is looked at after 256 pilots and after every doubling, and the first that is
 * narrow enough, and not only by chance, ends the sampling.
 *
 * @param limit the greatest number of pilots; evenly spread ones are rounded up to full sets
 * @param share the quantile whose interval decides, between 0 and 1
 * @param confidence how sure the interval is, between 0 and 1
 * @param precision half the width of the interval at which the sampling stops, m; zero to fly them
 *     all
 */
public record Sampling(int limit, double share, double confidence, double precision) {

  /** Numbers of pilots that are accepted. */
  public static final Quantity PILOTS = new Quantity("pilots", Unit.ONE, 1, 10_000_000);

  /** Shares that are accepted. */
  public static final Quantity SHARE = new Quantity("share", Unit.ONE, 0.01, 0.999);

  /** Pilots flown before the first look at the interval; full sets. */
  static final int FIRST = 256;

  /** How much wider the interval of half as many pilots may be; it is 1.4 to 2 times as wide. */
  private static final double FROM_HALF = 2;

  /** Checks the numbers. */
  public Sampling {
    PILOTS.check(limit);
    SHARE.check(share);
    SHARE.check(confidence);
    if (!(precision >= 0)) {
      throw new IllegalArgumentException("a precision is not negative: " + precision + " m");
    }
  }

  /**
   * A number of pilots, all flown, looked at by the 95 per cent quantile with 95 per cent
   * confidence.
   *
   * @param pilots the number
   * @return the sampling
   */
  public static Sampling of(int pilots) {
    return new Sampling(pilots, 0.95, 0.95, 0);
  }

  /**
   * The same number of pilots, looked at by another quantile.
   *
   * @param other the quantile, between 0 and 1
   * @return the changed sampling
   */
  public Sampling withShare(double other) {
    return new Sampling(limit, other, confidence, precision);
  }

  /**
   * Whether the interval is narrow enough, or lies beyond all that is finite, where more pilots
   * would not narrow it. An interval may be narrow by chance, and to stop at the first would mean
   * to choose those; so that of the first half of the pilots must not be much wider either.
   *
   * @param spread what all of them lost
   * @param half what the first half of them lost
   */
  boolean suffices(LossSpread spread, LossSpread half) {
    if (!(precision > 0) || half.samples() == 0) {
      return false;
    }
    Quantile quantile = spread.quantile(share, confidence);
    return quantile.low() == Double.POSITIVE_INFINITY
        || (quantile.halfWidth() <= precision
            && half.quantile(share, confidence).halfWidth() <= FROM_HALF * precision);
  }
}
