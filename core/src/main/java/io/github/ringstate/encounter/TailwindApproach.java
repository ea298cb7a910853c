package io.github.ringstate.encounter;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * A steep approach to a slow arrival, by the view over the ground, with the wind behind and little
 * power: the nose comes up, the ground speed goes, the airspeed goes through zero before it, and
 * the collective comes up less than the hover needs.
 *
 * <p>While the ground speed falls from that of the approach to that of the arrival, the collective
 * goes evenly from that of the steady approach towards that of the hover, as far as {@link #POWER}
 * says: a power between those of approach and hover stands for the collective that lies in the same
 * ratio between theirs (assumed). A power that is not above that of the approach leaves the
 * collective where it was. What the craft takes on the way depends on its motion.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record TailwindApproach(ParameterSet numbers) implements Entry {

  /**
   * Wind along the approach: positive from behind, negative from ahead. Default 8 kt, range -20 to
   * 30 kt.
   */
  public static final Parameter WIND =
      Parameter.of("wind", Unit.KNOT, -20, 30, 8, "assumed: a light tailwind");

  /** Ground speed of the steady approach. Default 30 kt, range 15 to 60 kt. */
  public static final Parameter GROUND_SPEED =
      Parameter.of("approach ground speed", Unit.KNOT, 15, 60, 30, "assumed");

  /**
   * Angle of the steady approach below the horizon, over the ground. Default 12 deg, range 3 to 30
   * deg.
   */
  public static final Parameter ANGLE =
      Parameter.of(
          "approach angle",
          Unit.DEGREE,
          3,
          30,
          12,
          "assumed: steeper than the 8 to 10 degrees of a normal approach (common practice, no"
              + " source)");

  /** Ground speed at which the craft is to arrive. Default 3 kt, range 0 to 20 kt. */
  public static final Parameter ARRIVAL_GROUND_SPEED =
      Parameter.of("arrival ground speed", Unit.KNOT, 0, 20, 3, "assumed: a walking pace");

  /**
   * Power that the collective at arrival stands for, over that of the hover. Default 60 %, range 20
   * to 100 %.
   */
  public static final Parameter POWER =
      Parameter.of(
          "arrival power",
          Unit.PERCENT,
          20,
          100,
          60,
          "assumed: low, the collective of the descent hardly raised towards that of the hover");

  /** How far the nose comes up at most. Default 8 deg, range 2 to 20 deg. */
  public static final Parameter NOSE_UP = Parameter.of("nose up", Unit.DEGREE, 2, 20, 8, "assumed");

  /** All parameters of the entry. */
  public static final List<Parameter> PARAMETERS =
      ApproachHands.after(WIND, GROUND_SPEED, ANGLE, ARRIVAL_GROUND_SPEED, POWER, NOSE_UP);

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public TailwindApproach {
    numbers = numbers.only(PARAMETERS);
  }

  /** Creates the entry with the standard value of each parameter. */
  public TailwindApproach() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "tailwind-approach";
  }

  @Override
  public WindField wind() {
    return new Wind(numbers.si(WIND), 0);
  }

  @Override
  public double intendedDescent() {
    return numbers.si(GROUND_SPEED) * FastMath.tan(numbers.si(ANGLE));
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    return Slowing.overGround(
        motion,
        numbers,
        numbers.si(GROUND_SPEED),
        numbers.si(ARRIVAL_GROUND_SPEED),
        intendedDescent(),
        numbers.si(NOSE_UP),
        numbers.si(POWER));
  }
}
