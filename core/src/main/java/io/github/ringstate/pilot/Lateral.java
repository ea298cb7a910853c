package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Climb power, and bank to the side that the tail rotor pushes to, until the disc meets the clean
 * air beside its wake; then level. The pedal holds the heading against the torque.
 */
public final class Lateral extends MadeOf implements Recovery {

  /** How far the craft banks. Default 15 deg, range 5 to 40 deg. */
  public static final Parameter BANK =
      Parameter.of("bank", Unit.DEGREE, 5, 40, 15, "10 to 20 degrees; common practice, no source");

  /** How fast it banks. Default 20 deg/s, range 2 to 50 deg/s. */
  public static final Parameter RATE =
      Parameter.of("bank rate", Unit.DEGREE_PER_SECOND, 2, 50, 20, "assumed");

  /** How fast the collective moves. Default 6 deg/s, range 1 to 20 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective rate", Unit.DEGREE_PER_SECOND, 1, 20, 6, "assumed");

  /** Power of the climb, over continuous power. Default 100 %, range 50 to 110 %. */
  public static final Parameter CLIMB_POWER =
      Parameter.of("climb power", Unit.PERCENT, 50, 110, 100, "assumed: continuous power");

  /** Sideways airspeed at which the craft is levelled. Default 16 kt, range 5 to 40 kt. */
  public static final Parameter EXIT_AIRSPEED =
      Parameter.of(
          "exit airspeed",
          Unit.KNOT,
          5,
          40,
          16,
          "lower end of effective translational lift in the handbooks, 16 to 24 kt");

  /**
   * How much later the collective moves than the bank; earlier if negative. Default 0 s, range -3
   * to 3 s.
   */
  public static final Parameter COLLECTIVE_LATER =
      Parameter.of("collective later", Unit.SECOND, -3, 3, 0, "assumed: both at once");

  /** All parameters of the technique. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          BANK,
          RATE,
          COLLECTIVE_RATE,
          CLIMB_POWER,
          EXIT_AIRSPEED,
          COLLECTIVE_LATER,
          PowerSetting.GAIN);

  private final ParameterSet numbers;
  private final double bank;
  private final double rate;
  private final double collectiveRate;
  private final double climbPower;
  private final PowerSetting power;
  private final StepOrder order;
  private final double exitAirspeed;
  private final List<Phase> phases;

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Lateral(ParameterSet numbers) {
    super(numbers.only(PARAMETERS));
    this.numbers = numbers.only(PARAMETERS);
    bank = numbers.si(BANK);
    rate = numbers.si(RATE);
    collectiveRate = numbers.si(COLLECTIVE_RATE);
    climbPower = numbers.si(CLIMB_POWER);
    power = new PowerSetting(numbers.si(PowerSetting.GAIN));
    order = new StepOrder(numbers.si(COLLECTIVE_LATER));
    exitAirspeed = numbers.si(EXIT_AIRSPEED);
    phases =
        List.of(
            Phase.of(
                "bank out",
                (seen, controls) -> command(seen.tailPush() * bank, seen, controls),
                seen -> seen.tailPush() * seen.sidewaysAirspeed() - exitAirspeed),
            Phase.last("level", (seen, controls) -> command(seen.hoverBank(), seen, controls)));
  }

  /**
   * The numbers of the technique.
   *
   * @return a value for each of {@link #PARAMETERS}
   */
  @Override
  public ParameterSet numbers() {
    return numbers;
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
  public List<Phase> phases() {
    return phases;
  }

  private void command(double wanted, Cockpit seen, Controls controls) {
    controls.pitch(order.attitude(seen, seen.pitch(), seen.hoverPitch()), rate);
    controls.bank(order.attitude(seen, seen.bank(), wanted), rate);
    controls.collective(order.collective(seen, power.collective(seen, climbPower)), collectiveRate);
  }
}
