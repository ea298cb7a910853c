package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.Unit;

/**
 * The limits of {@link Limited} on the command of a phase.
 *
 * @param pitch greatest pitch attitude, up or down, rad
 * @param bank greatest bank, left or right, rad
 * @param rate greatest rate of pitch attitude and bank, rad/s
 * @param reversalRate greatest rate while an attitude is brought back, rad/s
 * @param minimumThrust thrust over weight below which the collective is not lowered
 * @param thrustFade thrust over weight above it in which the lowering fades out
 * @param fullReversal displacement times error from which a movement is all a reversal, rad2
 * @param rateWeight what a rate counts for beside a displacement, s
 */
record Limits(
    double pitch,
    double bank,
    double rate,
    double reversalRate,
    double minimumThrust,
    double thrustFade,
    double fullReversal,
    double rateWeight) {

  /**
   * How much of what is asked for may be beyond a limit before the limit counts as binding: angle,
   * rad, or rate, rad/s. What equals a limit, or is all but done, must not lie on the edge, where a
   * rounding would make it bind and not bind in turn.
   */
  private static final double NOT_WORTH_MENTIONING = Unit.DEGREE.toSi(0.1);

  /** Error of attitude below which no rate is asked for that a limit could hold back, rad. */
  private static final double SMALL_ERROR = Unit.DEGREE.toSi(2);

  /** Holds back what is commanded. */
  void apply(Cockpit seen, Controls controls) {
    double wantedPitch = within(controls.pitch(), pitch);
    double wantedBank = within(controls.bank(), bank);
    controls.pitch(
        wantedPitch, Math.min(controls.pitchRate(), allowed(pitchReversal(seen, wantedPitch))));
    controls.bank(
        wantedBank, Math.min(controls.bankRate(), allowed(bankReversal(seen, wantedBank))));
    if (controls.collective() < seen.collective()) {
      double kept = Math.min(Math.max((seen.loadFactor() - minimumThrust) / thrustFade, 0), 1);
      controls.collective(
          seen.collective() + kept * (controls.collective() - seen.collective()),
          controls.collectiveRate());
    }
  }

  /** The rate that is allowed: faded, so that the equations of motion stay smooth. */
  private double allowed(double reversal) {
    double share = Math.min(Math.max(reversal / fullReversal, 0), 1);
    return rate + share * (Math.min(reversalRate, rate) - rate);
  }

  private double pitchReversal(Cockpit seen, double wanted) {
    return reversal(wanted - seen.pitch(), seen.pitch() - seen.hoverPitch(), seen.pitchRate());
  }

  private double bankReversal(Cockpit seen, double wanted) {
    return reversal(wanted - seen.bank(), seen.bank() - seen.hoverBank(), seen.bankRate());
  }

  /** How much a movement goes back on what is there, rad2; negative if it goes on. */
  private double reversal(double error, double displacement, double present) {
    return Math.max(-error * displacement, -error * present * rateWeight);
  }

  /** How far a phase is from being held back; see {@link Phase#limitMargin}. */
  double margin(Phase phase, Cockpit seen) {
    Controls wanted = new Controls();
    wanted.pitch(seen.pitch(), rate);
    wanted.bank(seen.bank(), rate);
    wanted.collective(seen.collective(), rate);
    phase.command(seen, wanted);
    double attitude = Math.min(pitch - Math.abs(wanted.pitch()), bank - Math.abs(wanted.bank()));
    double pitchRate =
        rateMargin(
            wanted.pitchRate(),
            wanted.pitch() - seen.pitch(),
            pitchReversal(seen, within(wanted.pitch(), pitch)));
    double bankRate =
        rateMargin(
            wanted.bankRate(),
            wanted.bank() - seen.bank(),
            bankReversal(seen, within(wanted.bank(), bank)));
    // No lowering, no limit: the margin is the greater of what is left of thrust and of what is not
    // asked for.
    double thrust =
        Math.max(
            seen.loadFactor() - minimumThrust - thrustFade,
            wanted.collective() - seen.collective() + NOT_WORTH_MENTIONING);
    return Math.min(
        Math.min(attitude + NOT_WORTH_MENTIONING, Math.min(pitchRate, bankRate)), thrust);
  }

  /** Negative where a rate is asked for that is held back; only its sign has a meaning. */
  private double rateMargin(double wanted, double error, double reversal) {
    double slack = NOT_WORTH_MENTIONING - wanted;
    double steady = Math.max(rate + slack, SMALL_ERROR - Math.abs(error));
    double reversing = Math.max(Math.min(reversalRate, rate) + slack, fullReversal - reversal);
    return Math.min(steady, reversing);
  }

  private static double within(double value, double limit) {
    return Math.min(Math.max(value, -limit), limit);
  }
}
