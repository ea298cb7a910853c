package io.github.ringstate.encounter;

import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A run at constant ground speed, as for a photograph, into a tailwind: the wind, abeam at first,
 * comes round behind; the pilot holds the ground speed, the airspeed goes, and the collective stays
 * where it was.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record Downwind(ParameterSet numbers) implements Entry {

  /** Wind from behind, once it has come round. Default 18 kt, range 0 to 60 kt. */
  public static final Parameter WIND =
      Parameter.of("wind", Unit.KNOT, 0, 60, 18, "assumed: a fresh breeze");

  /** Ground speed of the run. Default 20 kt, range 5 to 60 kt. */
  public static final Parameter GROUND_SPEED =
      Parameter.of("ground speed", Unit.KNOT, 5, 60, 20, "assumed: a slow run for photographs");

  /** Time in which the wind comes round. Default 10 s, range 2 to 60 s. */
  public static final Parameter TURN_TIME =
      Parameter.of("turn time", Unit.SECOND, 2, 60, 10, "assumed");

  /** Rate of descent planned for the run. Default 100 ft/min, range 0 to 1000 ft/min. */
  public static final Parameter DESCENT =
      Parameter.of("run descent", Unit.FOOT_PER_MINUTE, 0, 1000, 100, "assumed");

  /**
   * How far the nose may depart from that of the run to hold the ground speed. Default 8 deg, range
   * 1 to 20 deg.
   */
  public static final Parameter ATTITUDE =
      Parameter.of("attitude used", Unit.DEGREE, 1, 20, 8, "assumed");

  /** All parameters of the entry. */
  public static final List<Parameter> PARAMETERS =
      ApproachHands.after(WIND, GROUND_SPEED, TURN_TIME, DESCENT, ATTITUDE);

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public Downwind {
    numbers = numbers.only(PARAMETERS);
  }

  /** Creates the entry with the standard value of each parameter. */
  public Downwind() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "downwind";
  }

  /** The component along the run only: from nothing to all of it, with continuous acceleration. */
  @Override
  public WindField wind() {
    return new Rising(numbers.si(WIND), numbers.si(TURN_TIME));
  }

  /** A wind from behind, m/s, that rises within a time, s. */
  private record Rising(double wind, double turnTime) implements WindField {

    @Override
    public void velocity(double time, double north, double east, double height, double[] result) {
      double t = Math.min(Math.max(time / turnTime, 0), 1);
      result[0] = wind * t * t * t * (10 - t * (15 - 6 * t));
      result[1] = 0;
      result[2] = 0;
    }

    @Override
    public boolean variesWithHeight() {
      return false;
    }
  }

  @Override
  public double intendedDescent() {
    return numbers.si(DESCENT);
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    double groundSpeed = numbers.si(GROUND_SPEED);
    return new Slowing(
            groundSpeed - motion.windAtStart()[0],
            numbers.si(DESCENT),
            numbers.si(ATTITUDE),
            ApproachHands.of(numbers),
            seen -> seen.groundSpeed() - groundSpeed)
        .start(motion);
  }
}
