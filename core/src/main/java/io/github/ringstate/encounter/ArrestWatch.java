package io.github.ringstate.encounter;

import io.github.ringstate.quantity.Unit;

/**
 * Whether an arrest lasts. From the first zero of the vertical speed on the flight is watched until
 * the craft is 20 ft above its lowest point, or for 10 s. A later low counts; so does a rotor speed
 * outside its limits.
 */
final class ArrestWatch {

  /** Height above the lowest point from which on an arrest is taken to last, m. */
  static final double CLEAR = Unit.FOOT.toSi(20);

  /** How long an arrest is watched at most, s. */
  static final double LONGEST = 10;

  /**
   * Rate of descent at the end of that time beyond which the arrest did not last, m/s (assumed).
   */
  private static final double STILL_SINKING = Unit.FOOT_PER_MINUTE.toSi(100);

  /** A low that is less far below the one before is the same, m. */
  private static final double SAME_LOW = 1e-3;

  private double began;
  private double time;
  private double low;
  private double recognisedAt;
  private double peakDescent;
  private int logged;
  private boolean laterLow;

  /** Forgets the last descent. */
  void clear() {
    began = Double.NaN;
    time = Double.NaN;
    low = Double.NaN;
    laterLow = false;
  }

  boolean begun() {
    return !Double.isNaN(began);
  }

  /**
   * Begins.
   *
   * @param at when the descent was arrested, s
   * @param height the height then, m
   * @param recognised the height at recognition, m; NaN before it
   * @param peak the greatest rate of descent so far, m/s
   * @param events how many events were logged so far
   */
  void begin(double at, double height, double recognised, double peak, int events) {
    began = at;
    time = at;
    low = height;
    recognisedAt = recognised;
    peakDescent = peak;
    logged = events;
  }

  /** Takes note of a later low. */
  void lower(double at, double height) {
    time = at;
    low = height;
    laterLow = true;
  }

  /** Whether a height is a later low. */
  boolean isLower(double height) {
    return height < low - SAME_LOW;
  }

  /** When it ends at the latest, s. */
  double until() {
    return began + LONGEST;
  }

  /** Whether the arrest lasts by what is flown when its time is over. */
  boolean lasts(double verticalSpeed) {
    return verticalSpeed >= -STILL_SINKING;
  }

  /** When the lowest point was reached, s. */
  double time() {
    return time;
  }

  /** The lowest height, m. */
  double low() {
    return low;
  }

  boolean hadLaterLow() {
    return laterLow;
  }

  double recognisedAt() {
    return recognisedAt;
  }

  double peakDescent() {
    return peakDescent;
  }

  int logged() {
    return logged;
  }
}
