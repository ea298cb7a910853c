package io.github.ringstate.study;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Drift;
import io.github.ringstate.pilot.Hands;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.PowerSetting;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A recovery made to be compared: the craft leans one way or none, and climb power comes at once or
 * only after the collective was reduced. All else is equal between any two of them: the lean from
 * the attitude of the hover, its rate, the power, the rate of the collective, and the airspeeds at
 * which power comes back and the craft is levelled.
 *
 * @param way where the craft leans
 * @param atOnce whether climb power is set at once; if not, the collective is reduced until the
 *     craft has leaned over and moves that way
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record EqualTerms(Way way, boolean atOnce, ParameterSet numbers) implements Recovery {

  /** Where a craft leans. */
  public enum Way {
    /** Nose down. */
    AHEAD,
    /** To the side the tail rotor pushes to. */
    ASIDE,
    /** Nowhere. */
    NOWHERE
  }

  /** How far the craft leans. Default 15 deg, range 5 to 30 deg. */
  public static final Parameter LEAN =
      Parameter.of("lean", Unit.DEGREE, 5, 30, 15, "that of the forward and the lateral recovery");

  /** How fast it leans. Default 15 deg/s, range 2 to 50 deg/s. */
  public static final Parameter RATE =
      Parameter.of(
          "lean rate",
          Unit.DEGREE_PER_SECOND,
          2,
          50,
          15,
          "assumed: between those of the forward and the lateral recovery");

  /** How far the collective is reduced where it is. Default 0.9 deg, range 0 to 8 deg. */
  public static final Parameter REDUCTION =
      Parameter.of("collective reduction", Unit.DEGREE, 0, 8, 0.9, "that of the forward recovery");

  /** How fast the collective moves. Default 6 deg/s, range 1 to 20 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective rate", Unit.DEGREE_PER_SECOND, 1, 20, 6, "assumed");

  /** Airspeed at which reduced power comes back. Default 8 kt, range 0 to 40 kt. */
  public static final Parameter POWER_AIRSPEED =
      Parameter.of("power airspeed", Unit.KNOT, 0, 40, 8, "that of the forward recovery");

  /** Airspeed at which the craft is levelled. Default 16 kt, range 5 to 60 kt. */
  public static final Parameter EXIT_AIRSPEED =
      Parameter.of("exit airspeed", Unit.KNOT, 5, 60, 16, "that of the lateral recovery");

  /** Share of the lean from which reduced power comes back. Default 50 %, range 0 to 90 %. */
  public static final Parameter LEANED =
      Parameter.of("leaned for power", Unit.PERCENT, 0, 90, 50, "that of the forward recovery");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          LEAN,
          LEANED,
          RATE,
          REDUCTION,
          COLLECTIVE_RATE,
          POWER_AIRSPEED,
          EXIT_AIRSPEED,
          PowerSetting.CLIMB_POWER,
          PowerSetting.GAIN,
          Drift.GAIN,
          Drift.MAXIMUM);

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public EqualTerms {
    numbers = numbers.only(PARAMETERS);
  }

  @Override
  public String name() {
    return switch (way) {
          case AHEAD -> "ahead";
          case ASIDE -> "aside";
          case NOWHERE -> "nowhere";
        }
        + (atOnce ? "-at-once" : "-after-reduction");
  }

  @Override
  public List<Phase> phases() {
    Leaning leaning =
        new Leaning(
            way,
            way == Way.NOWHERE ? 0 : numbers.si(LEAN),
            numbers.si(LEANED),
            numbers.si(PowerSetting.CLIMB_POWER),
            PowerSetting.of(numbers),
            Drift.of(numbers),
            Hands.together(numbers.si(RATE), numbers.si(COLLECTIVE_RATE)));
    double reduction = numbers.si(REDUCTION);
    double power = numbers.si(POWER_AIRSPEED);
    double exit = numbers.si(EXIT_AIRSPEED);
    Phase lean = Phase.of("lean", leaning::leanWithPower, seen -> leaning.along(seen) - exit);
    Phase level = Phase.last("level", leaning::level);
    return atOnce
        ? List.of(lean, level)
        : List.of(
            Phase.of(
                "lean, collective reduced",
                (seen, controls) -> leaning.leanReduced(seen, reduction, controls),
                seen -> Math.min(leaning.leanedFar(seen), leaning.along(seen) - power)),
            lean,
            level);
  }

  /** What is done, in SI units. */
  private record Leaning(
      Way way,
      double lean,
      double leaned,
      double climbPower,
      PowerSetting setting,
      Drift drift,
      Hands hands) {

    /** Airspeed the way the craft leans, m/s. */
    double along(Cockpit seen) {
      return switch (way) {
        case AHEAD -> seen.forwardAirspeed();
        case ASIDE -> seen.tailPush() * seen.sidewaysAirspeed();
        case NOWHERE -> -Double.MAX_VALUE; // never comes to an end
      };
    }

    /** How much more the craft is leaned than power waits for, rad. */
    double leanedFar(Cockpit seen) {
      double now =
          way == Way.AHEAD
              ? seen.hoverPitch() - seen.pitch()
              : seen.tailPush() * (seen.bank() - seen.hoverBank());
      return now - leaned * lean;
    }

    void leanWithPower(Cockpit seen, Controls controls) {
      fly(lean, setting.collective(seen, climbPower), seen, controls);
    }

    void leanReduced(Cockpit seen, double reduction, Controls controls) {
      fly(lean, seen.heldCollective() - reduction, seen, controls);
    }

    void level(Cockpit seen, Controls controls) {
      fly(0, setting.collective(seen, climbPower), seen, controls);
    }

    private void fly(double angle, double collective, Cockpit seen, Controls controls) {
      hands.move(
          way == Way.AHEAD ? seen.hoverPitch() - angle : seen.hoverPitch(),
          way == Way.ASIDE
              ? seen.hoverBank() + seen.tailPush() * angle
              : drift.bank(seen, seen.hoverBank()),
          collective,
          seen,
          controls);
    }
  }
}
