package io.github.ringstate.encounter;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A quick stop with the wind behind: from level flight the nose comes up far, the ground speed
 * goes, the airspeed goes through zero before it, and the collective is not brought to that of the
 * hover in time. What the flare carries is gone when the speed is.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record QuickStop(ParameterSet numbers) implements Entry {

  /**
   * Wind along the flight: positive from behind, negative from ahead. Default 10 kt, range -20 to
   * 30 kt.
   */
  public static final Parameter WIND =
      Parameter.of("wind", Unit.KNOT, -20, 30, 10, "assumed: a light tailwind");

  /** Ground speed before the stop. Default 40 kt, range 15 to 60 kt. */
  public static final Parameter GROUND_SPEED =
      Parameter.of("stop ground speed", Unit.KNOT, 15, 60, 40, "assumed");

  /**
   * Power that the collective at the end of the stop stands for, over that of the hover. Default 60
   * %, range 20 to 100 %.
   */
  public static final Parameter POWER =
      Parameter.of(
          "stop power",
          Unit.PERCENT,
          20,
          100,
          60,
          "assumed: low, the collective of the flare hardly raised towards that of the hover");

  /** How far the nose comes up at most. Default 15 deg, range 2 to 20 deg. */
  public static final Parameter NOSE_UP =
      Parameter.of("nose up", Unit.DEGREE, 2, 20, 15, "assumed: a brisk flare");

  /** All parameters of the entry. */
  public static final List<Parameter> PARAMETERS =
      ApproachHands.after(WIND, GROUND_SPEED, POWER, NOSE_UP);

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public QuickStop {
    numbers = numbers.only(PARAMETERS);
  }

  /** Creates the entry with the standard value of each parameter. */
  public QuickStop() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "quick-stop";
  }

  @Override
  public WindField wind() {
    return new Wind(numbers.si(WIND), 0);
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    return Slowing.overGround(
        motion, numbers, numbers.si(GROUND_SPEED), 0, 0, numbers.si(NOSE_UP), numbers.si(POWER));
  }
}
