package io.github.ringstate.encounter;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A hover over one point into the wind, as for a photograph, that is let drift with the wind: the
 * view over the ground is that of a slow slide backwards, the airspeed that carried the craft goes,
 * and the collective stays where it was.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record PhotoDrift(ParameterSet numbers) implements Entry {

  /**
   * Wind from ahead in the hover, with which the craft then drifts. Default 20 kt, range 3 to 40
   * kt.
   */
  public static final Parameter WIND =
      Parameter.of("wind", Unit.KNOT, 3, 40, 20, "assumed: a fresh breeze");

  /** Airspeed that is left in the drift. Default 0 kt, range 0 to 20 kt. */
  public static final Parameter FINAL_AIRSPEED =
      Parameter.of("drift airspeed", Unit.KNOT, 0, 20, 0, "assumed: with the wind");

  /** How far the nose comes up at most. Default 4 deg, range 1 to 20 deg. */
  public static final Parameter NOSE_UP =
      Parameter.of("nose up", Unit.DEGREE, 1, 20, 4, "assumed: hardly noticed");

  /** All parameters of the entry. */
  public static final List<Parameter> PARAMETERS =
      ApproachHands.after(WIND, FINAL_AIRSPEED, NOSE_UP);

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public PhotoDrift {
    numbers = numbers.only(PARAMETERS);
  }

  /** Creates the entry with the standard value of each parameter. */
  public PhotoDrift() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "photo-drift";
  }

  @Override
  public WindField wind() {
    return new Wind(-numbers.si(WIND), 0);
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    double left = numbers.si(FINAL_AIRSPEED);
    return new Slowing(
            0 - motion.windAtStart()[0],
            0,
            numbers.si(NOSE_UP),
            ApproachHands.of(numbers),
            seen -> seen.forwardAirspeed() - left)
        .start(motion);
  }
}
