package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Power alone, the attitude left as it is: the wrong instinct. It may stop a sink that has only
 * begun, with much power to spare; in a developed ring state it does not.
 */
public final class CollectiveOnly extends ByNumbers {

  /**
   * Power that is pulled, over the take-off power in that air; more counts as all of it, since the
   * rotor's speed is kept. Default 100 %, range 50 to 120 %.
   */
  public static final Parameter POWER =
      Parameter.of("power pulled", Unit.PERCENT, 50, 120, 100, "assumed: all there is");

  /** How fast the collective moves. Default 6 deg/s, range 1 to 20 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective rate", Unit.DEGREE_PER_SECOND, 1, 20, 6, "assumed");

  /** How fast the attitude of the hover is restored. Default 12 deg/s, range 2 to 30 deg/s. */
  public static final Parameter RATE =
      Parameter.of("attitude rate", Unit.DEGREE_PER_SECOND, 2, 30, 12, "assumed");

  /** All parameters of the technique. */
  public static final List<Parameter> PARAMETERS =
      List.of(POWER, COLLECTIVE_RATE, RATE, PowerSetting.GAIN, Drift.GAIN, Drift.MAXIMUM);

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public CollectiveOnly(ParameterSet numbers) {
    super("collective", numbers.only(PARAMETERS), CollectiveOnly::phases);
  }

  /** Creates the technique with the standard value of each parameter. */
  public CollectiveOnly() {
    this(ParameterSet.standard(PARAMETERS));
  }

  private static List<Phase> phases(ParameterSet numbers) {
    double power = numbers.si(POWER);
    PowerSetting setting = PowerSetting.of(numbers);
    Drift drift = Drift.of(numbers);
    Hands hands = Hands.together(numbers.si(RATE), numbers.si(COLLECTIVE_RATE));
    return List.of(
        Phase.last(
            "power",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch(),
                    drift.bank(seen, seen.hoverBank()),
                    setting.collective(seen, power * seen.takeOffPower()),
                    seen,
                    controls)));
  }
}
