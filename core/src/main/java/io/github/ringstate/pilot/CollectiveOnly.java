package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Power alone, the attitude left as it is: the wrong instinct. It may stop a sink that has only
 * begun, with much power to spare; in a developed ring state it does not.
 */
public final class CollectiveOnly extends MadeOf implements Recovery {

  /**
   * Power that is pulled, over the greatest power of the engine in that air. Default 100 %, range
   * 50 to 120 %.
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

  private final ParameterSet numbers;
  private final double power;
  private final Drift drift;
  private final PowerSetting setting;
  private final double collectiveRate;
  private final double rate;
  private final List<Phase> phases;

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public CollectiveOnly(ParameterSet numbers) {
    super(numbers.only(PARAMETERS));
    this.numbers = numbers.only(PARAMETERS);
    power = numbers.si(POWER);
    drift = Drift.of(numbers);
    setting = new PowerSetting(numbers.si(PowerSetting.GAIN));
    collectiveRate = numbers.si(COLLECTIVE_RATE);
    rate = numbers.si(RATE);
    phases = List.of(Phase.last("power", this::command));
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
  public CollectiveOnly() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "collective";
  }

  @Override
  public List<Phase> phases() {
    return phases;
  }

  private void command(Cockpit seen, Controls controls) {
    controls.pitch(seen.hoverPitch(), rate);
    controls.bank(drift.bank(seen, seen.hoverBank()), rate);
    controls.collective(setting.collective(seen, power * seen.takeOffPower()), collectiveRate);
  }
}
