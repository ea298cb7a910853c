package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * How the hands move in a technique: how fast, and which of them first, counted from the beginning
 * of the technique. The later one keeps what is there until its time has come, and then moves as
 * commanded, faded in over a moment so that the right-hand side of the equations stays smooth.
 *
 * @param rate how fast the attitude moves, rad/s
 * @param collectiveRate how fast the collective moves, rad/s
 * @param collectiveAt when the collective begins to move, s
 * @param attitudeAt when the attitude begins to move, s
 * @param comingIn time in which the later of them comes in, s
 */
public record Hands(
    double rate, double collectiveRate, double collectiveAt, double attitudeAt, double comingIn) {

  /**
   * How much later the collective moves than the attitude; earlier if negative. Default 0 s, range
   * -3 to 3 s.
   */
  public static final Parameter COLLECTIVE_LATER =
      Parameter.of("collective later", Unit.SECOND, -3, 3, 0, "assumed: both at once");

  /** Time in which the hand that moves later comes in. Default 0.2 s, range 0.02 to 2 s. */
  public static final Parameter COMING_IN =
      Parameter.of("later hand time", Unit.SECOND, 0.02, 2, 0.2, "assumed: a quick movement");

  /** Both parameters. */
  public static final List<Parameter> PARAMETERS = List.of(COLLECTIVE_LATER, COMING_IN);

  /**
   * Hands of which one may move later than the other.
   *
   * @param numbers values for at least {@link #PARAMETERS} and the two rates
   * @param rate the parameter that says how fast the attitude moves
   * @param collectiveRate the parameter that says how fast the collective moves
   * @return the hands
   */
  public static Hands of(ParameterSet numbers, Parameter rate, Parameter collectiveRate) {
    double later = numbers.si(COLLECTIVE_LATER);
    return new Hands(
        numbers.si(rate),
        numbers.si(collectiveRate),
        Math.max(0, later),
        Math.max(0, -later),
        numbers.si(COMING_IN));
  }

  /**
   * Hands that both move at once.
   *
   * @param rate how fast the attitude moves, rad/s
   * @param collectiveRate how fast the collective moves, rad/s
   * @return the hands
   */
  public static Hands together(double rate, double collectiveRate) {
    return new Hands(rate, collectiveRate, 0, 0, COMING_IN.standard());
  }

  /**
   * Moves the controls.
   *
   * @param pitch the pitch attitude wanted, rad
   * @param bank the bank wanted, rad
   * @param collective the collective wanted, rad
   * @param seen what can be known
   * @param controls where to put the commands
   */
  public void move(double pitch, double bank, double collective, Cockpit seen, Controls controls) {
    controls.pitch(begun(seen, attitudeAt, seen.pitch(), pitch), rate);
    controls.bank(begun(seen, attitudeAt, seen.bank(), bank), rate);
    controls.collective(begun(seen, collectiveAt, seen.collective(), collective), collectiveRate);
  }

  private double begun(Cockpit seen, double at, double present, double wanted) {
    if (at == 0) {
      return wanted;
    }
    double t = Math.min(Math.max((seen.sinceTechniqueBegan() - at) / comingIn, 0), 1);
    return present + t * t * (3 - 2 * t) * (wanted - present);
  }
}
