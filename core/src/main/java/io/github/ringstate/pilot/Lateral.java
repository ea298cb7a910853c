package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Climb power, and bank to the side that the tail rotor pushes to, until the disc meets the clean
 * air beside its wake; then level. The pedal holds the heading against the torque.
 */
public final class Lateral implements Recovery {

  /** How far the craft banks. */
  public static final Parameter BANK =
      Parameter.of("bank", Unit.DEGREE, 5, 40, 15, "10 to 20 degrees; common practice, no source");

  /** How fast it banks. */
  public static final Parameter RATE =
      Parameter.of("bank speed", Unit.DEGREE_PER_SECOND, 2, 50, 20, "assumed");

  /** How fast the collective moves. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective speed", Unit.DEGREE_PER_SECOND, 1, 20, 6, "assumed");

  /** Power of the climb, over continuous power. */
  public static final Parameter CLIMB_POWER =
      Parameter.of("climb power", Unit.PERCENT, 50, 110, 100, "assumed: continuous power");

  /** Sideways airspeed at which the craft is levelled. */
  public static final Parameter EXIT_AIRSPEED =
      Parameter.of(
          "exit airspeed",
          Unit.KNOT,
          5,
          40,
          16,
          "lower end of effective translational lift in the handbooks, 16 to 24 kt");

  /** How much later the collective moves than the bank; earlier if negative. */
  public static final Parameter COLLECTIVE_LATER =
      Parameter.of("collective later", Unit.SECOND, -3, 3, 0, "assumed: both at once");

  /** All parameters of the technique. */
  public static final List<Parameter> PARAMETERS =
      List.of(BANK, RATE, COLLECTIVE_RATE, CLIMB_POWER, EXIT_AIRSPEED, COLLECTIVE_LATER);

  private static final List<String> PHASES = List.of("bank out", "level");

  private final double bank;
  private final double rate;
  private final double collectiveRate;
  private final double climbPower;
  private final StepOrder order;
  private final double exitAirspeed;

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Lateral(ParameterSet numbers) {
    bank = numbers.si(BANK);
    rate = numbers.si(RATE);
    collectiveRate = numbers.si(COLLECTIVE_RATE);
    climbPower = numbers.si(CLIMB_POWER);
    order = new StepOrder(numbers.si(COLLECTIVE_LATER));
    exitAirspeed = numbers.si(EXIT_AIRSPEED);
  }

  /** Creates the technique with the standard value of each parameter. */
  public Lateral() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "lateral";
  }

  @Override
  public List<String> phases() {
    return PHASES;
  }

  @Override
  public void command(int phase, Cockpit seen, Controls controls) {
    double wanted = phase == 0 ? seen.tailPush() * bank : seen.hoverBank();
    controls.pitch(order.attitude(phase, seen, seen.pitch(), seen.hoverPitch()), rate);
    controls.bank(order.attitude(phase, seen, seen.bank(), wanted), rate);
    controls.collective(
        order.collective(phase, seen, PowerSetting.collective(seen, climbPower)), collectiveRate);
  }

  @Override
  public double phaseEnd(int phase, Cockpit seen) {
    return seen.tailPush() * seen.sidewaysAirspeed() - exitAirspeed;
  }
}
