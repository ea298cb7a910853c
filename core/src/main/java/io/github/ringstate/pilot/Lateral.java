package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Climb power, and bank to the side that the tail rotor pushes to, until the disc meets the clean
 * air beside its wake; then level. The pedal holds the heading against the torque.
 */
public final class Lateral extends ByNumbers {

  /** How far the craft banks. Default 15 deg, range 5 to 40 deg. */
  public static final Parameter BANK =
      Parameter.of("bank", Unit.DEGREE, 5, 40, 15, "10 to 20 degrees; common practice, no source");

  /** How fast it banks. Default 20 deg/s, range 2 to 50 deg/s. */
  public static final Parameter RATE =
      Parameter.of("bank rate", Unit.DEGREE_PER_SECOND, 2, 50, 20, "assumed");

  /** How fast the collective moves. Default 6 deg/s, range 1 to 20 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective rate", Unit.DEGREE_PER_SECOND, 1, 20, 6, "assumed");

  /** Sideways airspeed at which the craft is levelled. Default 16 kt, range 5 to 40 kt. */
  public static final Parameter EXIT_AIRSPEED =
      Parameter.of(
          "exit airspeed",
          Unit.KNOT,
          5,
          40,
          16,
          "lower end of effective translational lift in the handbooks, 16 to 24 kt");

  /** All parameters of the technique. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          BANK,
          RATE,
          COLLECTIVE_RATE,
          PowerSetting.CLIMB_POWER,
          EXIT_AIRSPEED,
          Hands.COLLECTIVE_LATER,
          PowerSetting.GAIN,
          Hands.COMING_IN);

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Lateral(ParameterSet numbers) {
    super("lateral", numbers.only(PARAMETERS), Lateral::phases);
  }

  /** Creates the technique with the standard value of each parameter. */
  public Lateral() {
    this(ParameterSet.standard(PARAMETERS));
  }

  private static List<Phase> phases(ParameterSet numbers) {
    double bank = numbers.si(BANK);
    double exitAirspeed = numbers.si(EXIT_AIRSPEED);
    double climb = numbers.si(PowerSetting.CLIMB_POWER);
    PowerSetting power = PowerSetting.of(numbers);
    Hands hands = Hands.of(numbers, RATE, COLLECTIVE_RATE);
    return List.of(
        Phase.of(
            "bank out",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch(),
                    seen.tailPush() * bank,
                    power.collective(seen, climb),
                    seen,
                    controls),
            seen -> seen.tailPush() * seen.sidewaysAirspeed() - exitAirspeed),
        Phase.last(
            "level",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch(),
                    seen.hoverBank(),
                    power.collective(seen, climb),
                    seen,
                    controls)));
  }
}
