package io.github.ringstate.study;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;

/**
 * How many pilots are flown, and when that is enough.
 *
 * <p>The band is looked at after every 250 pilots, and the first that is narrow enough ends the
 * sampling. Bands chosen so are a little narrower than their confidence says; whoever needs it
 * exact flies them all.
 *
 * @param limit the greatest number of pilots
 * @param share the quantile whose band decides, between 0 and 1
 * @param confidence how sure the band is, between 0 and 1
 * @param enough the width of the band at which the sampling stops, m; zero to fly them all
 */
public record Sampling(int limit, double share, double confidence, double enough) {

  /** Numbers of pilots that are accepted. */
  public static final Quantity PILOTS = new Quantity("pilots", Unit.ONE, 1, 10_000_000);

  /** Shares that are accepted. */
  public static final Quantity SHARE = new Quantity("share", Unit.ONE, 0.01, 0.999);

  /** Pilots flown between two looks at the band; the same for any number of threads. */
  static final int BATCH = 250;

  /** Checks the numbers. */
  public Sampling {
    PILOTS.check(limit);
    SHARE.check(share);
    SHARE.check(confidence);
    if (!(enough >= 0)) {
      throw new IllegalArgumentException("a width of band is not negative: " + enough + " m");
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
    return new Sampling(limit, other, confidence, enough);
  }

  /**
   * Whether the band is narrow enough, or lies beyond all that is finite, where more pilots would
   * not narrow it.
   */
  boolean suffices(LossSpread spread) {
    if (!(enough > 0) || spread.samples() == 0) {
      return false;
    }
    Quantile quantile = spread.quantile(share, confidence);
    return quantile.width() <= enough || quantile.low() == Double.POSITIVE_INFINITY;
  }
}
