package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.MadeOf;
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
public final class Limited extends MadeOf implements Recovery {

  /** Greatest pitch attitude, up or down. Default 25 deg, range 5 to 60 deg. */
  public static final Parameter PITCH =
      Parameter.of("pitch kept within", Unit.DEGREE, 5, 60, 25, "assumed");

  /** Greatest bank, left or right. Default 30 deg, range 5 to 60 deg. */
  public static final Parameter BANK =
      Parameter.of("bank kept within", Unit.DEGREE, 5, 60, 30, "assumed");

  /** Greatest rate of pitch attitude and bank. Default 25 deg/s, range 2 to 60 deg/s. */
  public static final Parameter RATE =
      Parameter.of("rate kept within", Unit.DEGREE_PER_SECOND, 2, 60, 25, "assumed");

  /** Greatest rate while an attitude is brought back. Default 12 deg/s, range 2 to 60 deg/s. */
  public static final Parameter REVERSAL_RATE =
      Parameter.of(
          "reversal rate kept within",
          Unit.DEGREE_PER_SECOND,
          2,
          60,
          12,
          "assumed; abrupt reversal of the cyclic is warned of in common practice, no source");

  /**
   * Thrust over weight below which the collective is not lowered further. Default 0.6, range 0 to 1
   * (a pure number).
   */
  public static final Parameter MINIMUM_THRUST =
      Parameter.of(
          "minimum thrust",
          Unit.ONE,
          0,
          1,
          0.6,
          "assumed: well above the low thrust at which two-bladed rotors are in danger");

  /**
   * Thrust over weight above the minimum in which the lowering of the collective is faded out.
   * Default 0.1, range 0.01 to 0.5 (a pure number).
   */
  public static final Parameter THRUST_FADE =
      Parameter.of("thrust fade", Unit.ONE, 0.01, 0.5, 0.1, "assumed");

  /**
   * Displacement of attitude times error, or rate times {@link #RATE_WEIGHT} times error, from
   * which a movement is all a reversal. Default 0.001 rad2, range 0.0001 to 0.1 rad2.
   */
  public static final Parameter FULL_REVERSAL =
      Parameter.of(
          "full reversal",
          Unit.SQUARE_RADIAN,
          1e-4,
          0.1,
          1e-3,
          "assumed: about two degrees of each");

  /**
   * What a rate counts for beside a displacement, to tell a reversal. Default 0.35 s, range 0.05 to
   * 2 s.
   */
  public static final Parameter RATE_WEIGHT =
      Parameter.of(
          "reversal rate weight",
          Unit.SECOND,
          0.05,
          2,
          0.35,
          "assumed: about how long a roll takes");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          PITCH,
          BANK,
          RATE,
          REVERSAL_RATE,
          MINIMUM_THRUST,
          THRUST_FADE,
          FULL_REVERSAL,
          RATE_WEIGHT);

  private final Recovery recovery;
  private final ParameterSet numbers;
  private final List<Phase> phases;

  /**
   * Puts limits on a recovery.
   *
   * @param recovery the technique
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Limited(Recovery recovery, ParameterSet numbers) {
    super(recovery, numbers.only(PARAMETERS));
    this.recovery = recovery;
    this.numbers = numbers.only(PARAMETERS);
    phases = within(recovery.phases(), limits(numbers));
  }

  /**
   * Puts the standard limits on a recovery.
   *
   * @param recovery the technique
   */
  public Limited(Recovery recovery) {
    this(recovery, ParameterSet.standard(PARAMETERS));
  }

  /**
   * What is held within limits.
   *
   * @return the technique
   */
  public Recovery recovery() {
    return recovery;
  }

  /**
   * The limits.
   *
   * @return a value for each of {@link #PARAMETERS}
   */
  @Override
  public ParameterSet numbers() {
    return numbers;
  }

  @Override
  public String name() {
    return recovery.name();
  }

  /** The phases of the technique, each within the limits. */
  @Override
  public List<Phase> phases() {
    return phases;
  }

  private static Limits limits(ParameterSet numbers) {
    return new Limits(
        numbers.si(PITCH),
        numbers.si(BANK),
        numbers.si(RATE),
        numbers.si(REVERSAL_RATE),
        numbers.si(MINIMUM_THRUST),
        numbers.si(THRUST_FADE),
        numbers.si(FULL_REVERSAL),
        numbers.si(RATE_WEIGHT));
  }

  private static List<Phase> within(List<Phase> phases, Limits limits) {
    return phases.stream().<Phase>map(phase -> new Within(phase, limits)).toList();
  }

  private record Within(Phase phase, Limits limits) implements Phase {

    @Override
    public String name() {
      return phase.name();
    }

    @Override
    public void command(Cockpit seen, Controls controls) {
      phase.command(seen, controls);
      limits.apply(seen, controls);
    }

    @Override
    public boolean ends() {
      return phase.ends();
    }

    @Override
    public double end(Cockpit seen) {
      return phase.end(seen);
    }

    @Override
    public List<Phase> instead(Cockpit seen) {
      List<Phase> other = phase.instead(seen);
      return other.isEmpty() ? other : within(other, limits);
    }

    @Override
    public double limitMargin(Cockpit seen) {
      return Math.min(limits.margin(phase, seen), phase.limitMargin(seen));
    }
  }
}
