package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A recovery within limits that a careful pilot keeps whatever the technique asks for: attitude and
 * its rate, no abrupt reversal of the cyclic, and no thrust below a set part of the weight. The run
 * reports when a limit begins to bind.
 *
 * <p>A reversal is a movement back: against the rate that is there, or from where the attitude has
 * gone towards that of the hover and beyond it.
 */
public final class Limited implements Recovery {

  /** Greatest pitch attitude, up or down. */
  public static final Parameter PITCH =
      Parameter.of("pitch kept within", Unit.DEGREE, 5, 60, 25, "assumed");

  /** Greatest bank, left or right. */
  public static final Parameter BANK =
      Parameter.of("bank kept within", Unit.DEGREE, 5, 60, 30, "assumed");

  /** Greatest rate of pitch attitude and bank. */
  public static final Parameter RATE =
      Parameter.of("rate kept within", Unit.DEGREE_PER_SECOND, 2, 60, 25, "assumed");

  /** Greatest rate while an attitude is brought back. */
  public static final Parameter REVERSAL_RATE =
      Parameter.of(
          "reversal rate kept within",
          Unit.DEGREE_PER_SECOND,
          2,
          60,
          12,
          "assumed; abrupt reversal of the cyclic is warned of in common practice, no source");

  /** Thrust over weight below which the collective is not lowered further. */
  public static final Parameter LEAST_THRUST =
      Parameter.of(
          "least thrust",
          Unit.ONE,
          0,
          1,
          0.6,
          "assumed: well above the low thrust at which two-bladed rotors are in danger");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS =
      List.of(PITCH, BANK, RATE, REVERSAL_RATE, LEAST_THRUST);

  /** Thrust over weight in which the lowering of the collective is faded out. */
  private static final double FADE = 0.1;

  /**
   * Displacement of attitude times error, or rate times {@link #RATE_WEIGHT} times error, from
   * which a movement is all a reversal, rad2 (assumed: about two degrees of each).
   */
  private static final double REVERSAL = 1e-3;

  /** What a rate counts for beside a displacement, s (assumed: about how long a roll takes). */
  private static final double RATE_WEIGHT = 0.35;

  /**
   * How much of what is asked for may be beyond a limit before the limit counts as binding: angle,
   * rad, or rate, rad/s. What equals a limit, or is all but done, must not lie on the edge, where a
   * rounding would make it bind and not bind in turn.
   */
  private static final double NOT_WORTH_MENTIONING = Unit.DEGREE.toSi(0.1);

  /** Error of attitude below which no rate is asked for that a limit could hold back, rad. */
  private static final double SMALL_ERROR = Unit.DEGREE.toSi(2);

  private final Recovery recovery;
  private final double pitch;
  private final double bank;
  private final double rate;
  private final double reversalRate;
  private final double leastThrust;

  /**
   * Puts limits on a recovery.
   *
   * @param recovery the technique
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Limited(Recovery recovery, ParameterSet numbers) {
    this.recovery = recovery;
    pitch = numbers.si(PITCH);
    bank = numbers.si(BANK);
    rate = numbers.si(RATE);
    reversalRate = numbers.si(REVERSAL_RATE);
    leastThrust = numbers.si(LEAST_THRUST);
  }

  /**
   * Puts the standard limits on a recovery.
   *
   * @param recovery the technique
   */
  public Limited(Recovery recovery) {
    this(recovery, ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return recovery.name();
  }

  @Override
  public List<String> phases() {
    return recovery.phases();
  }

  @Override
  public void command(int phase, Cockpit seen, Controls controls) {
    recovery.command(phase, seen, controls);
    double wantedPitch = within(controls.pitch(), pitch);
    double wantedBank = within(controls.bank(), bank);
    controls.pitch(
        wantedPitch, Math.min(controls.pitchRate(), allowed(pitchReversal(seen, wantedPitch))));
    controls.bank(
        wantedBank, Math.min(controls.bankRate(), allowed(bankReversal(seen, wantedBank))));
    if (controls.collective() < seen.collective()) {
      double kept = Math.min(Math.max((seen.loadFactor() - leastThrust) / FADE, 0), 1);
      controls.collective(
          seen.collective() + kept * (controls.collective() - seen.collective()),
          controls.collectiveRate());
    }
  }

  /** The rate that is allowed: faded, so that the equations of motion stay smooth. */
  private double allowed(double reversal) {
    double share = Math.min(Math.max(reversal / REVERSAL, 0), 1);
    return rate + share * (Math.min(reversalRate, rate) - rate);
  }

  private static double pitchReversal(Cockpit seen, double wanted) {
    return reversal(wanted - seen.pitch(), seen.pitch() - seen.hoverPitch(), seen.pitchRate());
  }

  private static double bankReversal(Cockpit seen, double wanted) {
    return reversal(wanted - seen.bank(), seen.bank() - seen.hoverBank(), seen.bankRate());
  }

  /** How much a movement goes back on what is there, rad2; negative if it goes on. */
  private static double reversal(double error, double displacement, double present) {
    return Math.max(-error * displacement, -error * present * RATE_WEIGHT);
  }

  @Override
  public double phaseEnd(int phase, Cockpit seen) {
    return recovery.phaseEnd(phase, seen);
  }

  @Override
  public int next(int phase, Cockpit seen) {
    return recovery.next(phase, seen);
  }

  @Override
  public double limitMargin(int phase, Cockpit seen) {
    Controls wanted = new Controls();
    wanted.pitch(seen.pitch(), rate);
    wanted.bank(seen.bank(), rate);
    wanted.collective(seen.collective(), rate);
    recovery.command(phase, seen, wanted);
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
            seen.loadFactor() - leastThrust - FADE,
            wanted.collective() - seen.collective() + NOT_WORTH_MENTIONING);
    return Math.min(
        Math.min(attitude + NOT_WORTH_MENTIONING, Math.min(pitchRate, bankRate)),
        Math.min(thrust, recovery.limitMargin(phase, seen)));
  }

  /** Negative where a rate is asked for that is held back; only its sign has a meaning. */
  private double rateMargin(double wanted, double error, double reversal) {
    double slack = NOT_WORTH_MENTIONING - wanted;
    double steady = Math.max(rate + slack, SMALL_ERROR - Math.abs(error));
    double reversing = Math.max(Math.min(reversalRate, rate) + slack, REVERSAL - reversal);
    return Math.min(steady, reversing);
  }

  private static double within(double value, double limit) {
    return Math.min(Math.max(value, -limit), limit);
  }
}
