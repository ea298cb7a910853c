package io.github.ringstate.encounter;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A steep approach into the wind that is slowed too much: the nose comes up, the airspeed goes, and
 * the collective of the descent stays where it was.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record Steep(ParameterSet numbers) implements Entry {

  /** Wind from ahead. Default 0 kt, range 0 to 60 kt. */
  public static final Parameter WIND = Parameter.of("wind", Unit.KNOT, 0, 60, 0, "calm unless set");

  /** Airspeed of the approach. Default 25 kt, range 10 to 60 kt. */
  public static final Parameter APPROACH_AIRSPEED =
      Parameter.of("approach airspeed", Unit.KNOT, 10, 60, 25, "assumed");

  /** Rate of descent of the approach. Default 500 ft/min, range 100 to 1500 ft/min. */
  public static final Parameter DESCENT =
      Parameter.of("approach descent", Unit.FOOT_PER_MINUTE, 100, 1500, 500, "assumed");

  /** Airspeed to which the craft is slowed. Default 4 kt, range 0 to 40 kt. */
  public static final Parameter FINAL_AIRSPEED =
      Parameter.of("final airspeed", Unit.KNOT, 0, 40, 4, "assumed");

  /** How far the nose comes up at most. Default 6 deg, range 1 to 20 deg. */
  public static final Parameter NOSE_UP = Parameter.of("nose up", Unit.DEGREE, 1, 20, 6, "assumed");

  /** All parameters of the entry. */
  public static final List<Parameter> PARAMETERS =
      ApproachHands.after(WIND, APPROACH_AIRSPEED, DESCENT, FINAL_AIRSPEED, NOSE_UP);

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public Steep {
    numbers = numbers.only(PARAMETERS);
  }

  /** Creates the entry with the standard value of each parameter. */
  public Steep() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "steep";
  }

  @Override
  public WindField wind() {
    return new Wind(-numbers.si(WIND), 0);
  }

  @Override
  public double intendedDescent() {
    return numbers.si(DESCENT);
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    double finalAirspeed = numbers.si(FINAL_AIRSPEED);
    return new Slowing(
            numbers.si(APPROACH_AIRSPEED),
            numbers.si(DESCENT),
            numbers.si(NOSE_UP),
            ApproachHands.of(numbers),
            seen -> seen.forwardAirspeed() - finalAirspeed)
        .start(motion);
  }
}
