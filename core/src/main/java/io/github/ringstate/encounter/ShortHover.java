package io.github.ringstate.encounter;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A hover out of ground effect that is short of power: level flight is slowed to a hover over one
 * point, as for a photograph or a pick-up, and the collective comes up to less than that hover
 * takes.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record ShortHover(ParameterSet numbers) implements Entry {

  /** Wind from ahead. Default 0 kt, range 0 to 30 kt. */
  public static final Parameter WIND = Parameter.of("wind", Unit.KNOT, 0, 30, 0, "calm unless set");

  /** Ground speed of the level flight. Default 20 kt, range 5 to 60 kt. */
  public static final Parameter GROUND_SPEED =
      Parameter.of("arriving ground speed", Unit.KNOT, 5, 60, 20, "assumed");

  /**
   * Power that the collective in the hover stands for, over that of a hover out of ground effect in
   * calm air. Default 90 %, range 50 to 100 %.
   */
  public static final Parameter POWER =
      Parameter.of(
          "power in the hover",
          Unit.PERCENT,
          50,
          100,
          90,
          "assumed: short by a tenth, as where ground effect was reckoned with");

  /** How far the nose comes up at most. Default 6 deg, range 1 to 20 deg. */
  public static final Parameter NOSE_UP = Parameter.of("nose up", Unit.DEGREE, 1, 20, 6, "assumed");

  /** All parameters of the entry. */
  public static final List<Parameter> PARAMETERS =
      ApproachHands.after(WIND, GROUND_SPEED, POWER, NOSE_UP);

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public ShortHover {
    numbers = numbers.only(PARAMETERS);
  }

  /** Creates the entry with the standard value of each parameter. */
  public ShortHover() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "short-hover";
  }

  @Override
  public WindField wind() {
    return new Wind(-numbers.si(WIND), 0);
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    return Slowing.overGround(
        motion, numbers, numbers.si(GROUND_SPEED), 0, 0, numbers.si(NOSE_UP), numbers.si(POWER));
  }
}
