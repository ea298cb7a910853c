package io.github.ringstate.pilot;

import io.github.ringstate.quantity.SoftLimit;

/**
 * Keeping a craft from drifting off to the side. A change of power changes the push of the tail
 * rotor; nobody lets a craft slide away for that, so whoever holds the wings level in the words of
 * a technique leans a little against the drift.
 */
public final class Drift {

  /** Bank against drift, rad per m/s (assumed: about 1.5 degrees for a knot). */
  private static final double GAIN = 0.05;

  /** Greatest bank against drift, rad (assumed). */
  private static final double GREATEST = 0.15;

  private Drift() {}

  /**
   * The bank that holds a craft over its track.
   *
   * @param seen what can be known
   * @param datum the bank in steady flight without drift, rad, positive to the right
   * @return the bank to command, rad
   */
  public static double bank(Cockpit seen, double datum) {
    return datum - SoftLimit.within(GAIN * seen.sidewaysGroundSpeed(), GREATEST);
  }
}
