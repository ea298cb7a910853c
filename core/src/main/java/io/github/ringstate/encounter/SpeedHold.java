package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.SoftLimit;
import io.github.ringstate.quantity.Unit;

/** Holds a speed with the nose, gently and within a limit of attitude. */
final class SpeedHold {

  /** How fast a pilot moves nose and collective in an approach, rad/s (assumed). */
  static final double RATE = Unit.DEGREE_PER_SECOND.toSi(6);

  /** Excess of speed at which most of the attitude is used, m/s (assumed). */
  private static final double SOFTNESS = Unit.KNOT.toSi(5);

  private final double datum;
  private final double greatest;

  /**
   * Creates it.
   *
   * @param datum the attitude at the right speed, rad
   * @param greatest how far the attitude may depart from that, rad
   */
  SpeedHold(double datum, double greatest) {
    this.datum = datum;
    this.greatest = greatest;
  }

  /**
   * Commands the nose.
   *
   * @param excess how much the speed is too high, m/s
   * @param controls where to put the command
   */
  void command(double excess, Controls controls) {
    controls.pitch(datum + SoftLimit.within(greatest / SOFTNESS * excess, greatest), RATE);
  }
}
