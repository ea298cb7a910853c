package io.github.ringstate.pilot;

import io.github.ringstate.flight.Cockpit;
import io.github.ringstate.flight.Controls;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A recovery within limits that a careful pilot keeps whatever the technique asks for: attitude and
 * its rate, no abrupt reversal of the cyclic, and no thrust below a set part of the weight. The run
 * reports when a limit begins to bind.
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

  /** Greatest rate while the cyclic is reversed. */
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
        wantedPitch,
        Math.min(controls.pitchRate(), allowed(wantedPitch - seen.pitch(), seen.pitchRate())));
    controls.bank(
        wantedBank,
        Math.min(controls.bankRate(), allowed(wantedBank - seen.bank(), seen.bankRate())));
    if (controls.collective() < seen.collective()) {
      double kept = Math.min(Math.max((seen.loadFactor() - leastThrust) / FADE, 0), 1);
      controls.collective(
          seen.collective() + kept * (controls.collective() - seen.collective()),
          controls.collectiveRate());
    }
  }

  private double allowed(double error, double present) {
    return error * present < 0 ? Math.min(reversalRate, rate) : rate;
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
    wanted.hold(seen);
    recovery.command(phase, seen, wanted);
    double attitude = Math.min(pitch - Math.abs(wanted.pitch()), bank - Math.abs(wanted.bank()));
    double pitchRate =
        rateMargin(wanted.pitch() - seen.pitch(), seen.pitchRate(), wanted.pitchRate());
    double bankRate = rateMargin(wanted.bank() - seen.bank(), seen.bankRate(), wanted.bankRate());
    // No lowering, no limit: the margin is the greater of what is left of thrust and of what is not
    // asked for.
    double thrust =
        Math.max(seen.loadFactor() - leastThrust - FADE, wanted.collective() - seen.collective());
    return Math.min(
        Math.min(attitude, Math.min(pitchRate, bankRate)),
        Math.min(thrust, recovery.limitMargin(phase, seen)));
  }

  private double rateMargin(double error, double present, double wanted) {
    double steady = rate - wanted;
    double reversing = Math.max(reversalRate - wanted, error * present + REVERSAL_NOTICED);
    return Math.min(steady, reversing);
  }

  /** Error of attitude times rate, rad2/s, from which a reversal counts as one (assumed). */
  private static final double REVERSAL_NOTICED = 1e-3;

  private static double within(double value, double limit) {
    return Math.min(Math.max(value, -limit), limit);
  }
}
