package io.github.ringstate.study.run;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The airspeeds between which a run keeps its margins: the planned descent stays away from the ring
 * state, airspeed and height stay out of the area that the height-velocity curve says to avoid, and
 * the continuous power suffices.
 *
 * @param minimum the least of them, m/s
 * @param bound what the least follows from
 * @param maximum the greatest, m/s, not below the least
 * @param step what one can fly and read an airspeed or a ground speed to, m/s, positive: limits are
 *     looked for in whole steps
 */
public record RunLimits(double minimum, Bound bound, double maximum, double step) {

  /** What the minimum airspeed follows from. */
  public enum Bound {
    /** It is asked for in any case. */
    ASKED,
    /** Below it the margin to the ring state is not kept. */
    RING_STATE,
    /** Below it the height flown is in the area that the height-velocity curve says to avoid. */
    HEIGHT_VELOCITY,
    /** Below it the continuous power does not suffice. */
    POWER
  }

  /** Extra rates of descent that may be asked to be left before the ring state. */
  public static final Quantity BOUNDARY_MARGIN =
      new Quantity("boundary margin", Unit.FOOT_PER_MINUTE, 0, 2000);

  /** Airspeeds that may be asked to be kept at least. */
  public static final Quantity MINIMUM_AIRSPEED =
      new Quantity("minimum airspeed", Unit.KNOT, 0, 60);

  /** A hair by which rounding may move a speed, m/s. */
  private static final double HAIR = 1e-9;

  /** Airspeeds that are looked at, m/s: up to the greatest ground speed into the greatest wind. */
  private static final double FASTEST =
      Unit.KNOT.toSi(
          RunPlan.GROUND_SPEED.high() + RunWind.SPEED.high() + RunWind.ALLOWANCES.high());

  /** Checks the order. */
  public RunLimits {
    if (!(minimum <= maximum && step > 0)) {
      throw new IllegalArgumentException(
          "no airspeeds lie between " + minimum + " and " + maximum + " m/s in steps of " + step);
    }
  }

  /**
   * Finds them.
   *
   * @param study the run
   * @param boundaryMargin extra rate of descent to be left before the ring state, m/s
   * @param minimumAirspeed airspeed to be kept in any case, m/s
   * @param step what an airspeed is flown and read to, m/s, positive, for instance one knot
   * @return the airspeeds, from the first step from which on all steps keep the boundary margin and
   *     which has the power, but not before that to be kept in any case and that of the
   *     height-velocity curve, to the last with the power; empty where there is none
   */
  public static Optional<RunLimits> find(
      RunStudy study, double boundaryMargin, double minimumAirspeed, double step) {
    int fastest = down(FASTEST, step);
    int clear = fastest + 1;
    while (clear > 0 && keeps(study.boundaryMargin((clear - 1) * step), boundaryMargin)) {
      clear--;
    }
    int asked = up(minimumAirspeed, step);
    int curve = up(study.plan().minimumByCurve().orElse(0), step);
    int least = Math.max(clear, Math.max(asked, curve));
    Bound bound =
        least == asked ? Bound.ASKED : least == curve ? Bound.HEIGHT_VELOCITY : Bound.RING_STATE;
    while (least <= fastest && !hasPower(study, least * step)) {
      least++;
      bound = Bound.POWER;
    }
    if (least > fastest) {
      return Optional.empty();
    }
    int greatest = least;
    while (greatest < fastest && hasPower(study, (greatest + 1) * step)) {
      greatest++;
    }
    return Optional.of(new RunLimits(least * step, bound, greatest * step, step));
  }

  private static boolean keeps(OptionalDouble margin, double wanted) {
    return margin.isEmpty() || margin.getAsDouble() >= wanted;
  }

  private static boolean hasPower(RunStudy study, double airspeed) {
    OptionalDouble power = study.power(airspeed);
    return power.isPresent()
        && power.getAsDouble() <= study.plan().craft().continuousPower(study.plan().air());
  }

  /** The last whole step that is not above a speed, whatever the rounding. */
  private static int down(double speed, double step) {
    return (int) Math.floor(speed / step + 1e-9);
  }

  /** The first whole step that is not below a speed, whatever the rounding. */
  private static int up(double speed, double step) {
    return (int) Math.ceil(speed / step - 1e-9);
  }

  /**
   * Whether an airspeed is too low.
   *
   * @param airspeed the airspeed, m/s
   * @return true below the minimum
   */
  public boolean below(double airspeed) {
    return !(airspeed >= minimum - HAIR);
  }

  /**
   * Whether the airspeed of a run is too low, or comes from behind.
   *
   * @param plan the run
   * @param track direction flown over the ground, rad clockwise from north
   * @return true if in gusts and lulls it falls below the minimum, or gusts overtake the run
   */
  public boolean below(RunPlan plan, double track) {
    return plan.isOvertaken(track) || below(plan.minimumAirspeed(track));
  }

  /**
   * Whether an airspeed is too high.
   *
   * @param airspeed the airspeed, m/s
   * @return true above the maximum
   */
  public boolean above(double airspeed) {
    return !(airspeed <= maximum + HAIR);
  }

  /**
   * The greatest ground speed on a track, no greater than planned, at which the airspeed stays
   * between these limits in gusts and lulls.
   *
   * @param plan the run
   * @param track direction flown over the ground, rad clockwise from north
   * @return the ground speed, m/s, whole steps; empty if there is none
   */
  public OptionalDouble maximumGroundSpeed(RunPlan plan, double track) {
    for (int i = down(plan.groundSpeed(), step); i >= 0; i--) {
      if (keptBy(plan.withGroundSpeed(i * step), track)) {
        return OptionalDouble.of(i * step);
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * The least ground speed on a track, no less than planned, at which the airspeed stays between
   * these limits in gusts and lulls.
   *
   * @param plan the run
   * @param track direction flown over the ground, rad clockwise from north
   * @return the ground speed, m/s, whole steps; empty if there is none
   */
  public OptionalDouble minimumGroundSpeed(RunPlan plan, double track) {
    int fastest = down(Unit.KNOT.toSi(RunPlan.GROUND_SPEED.high()), step);
    for (int i = up(plan.groundSpeed(), step); i <= fastest; i++) {
      if (keptBy(plan.withGroundSpeed(i * step), track)) {
        return OptionalDouble.of(i * step);
      }
    }
    return OptionalDouble.empty();
  }

  private boolean keptBy(RunPlan plan, double track) {
    return !above(plan.maximumAirspeed(track)) && !below(plan, track);
  }
}
