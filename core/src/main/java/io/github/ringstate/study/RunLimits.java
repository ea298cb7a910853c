package io.github.ringstate.study;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The airspeeds between which a run keeps its margins: the planned descent stays away from the ring
 * state, and the continuous power suffices.
 *
 * @param leastKt the least of them, kt, whole
 * @param greatestKt the greatest, kt, whole; not below the least
 */
public record RunLimits(int leastKt, int greatestKt) {

  /** Extra rate of descent that is to be left before the ring state. */
  public static final Parameter BOUNDARY_MARGIN =
      Parameter.of(
          "boundary margin",
          Unit.FOOT_PER_MINUTE,
          0,
          2000,
          300,
          "assumed: as much again as the 300 ft/min from which handbooks warn of the ring state");

  /** Airspeed that is to be kept at least. */
  public static final Parameter LEAST_AIRSPEED =
      Parameter.of(
          "least airspeed",
          Unit.KNOT,
          0,
          60,
          24,
          "upper end of effective translational lift, 16 to 24 kt, below which handbooks place the"
              + " ring state (FAA-H-8083-21A, quoted)");

  /** Airspeeds that are looked at, kt: the greatest ground speed into the greatest wind. */
  private static final int FASTEST_KT =
      (int) (RunPlan.GROUND_SPEED.quantity().high() + RunPlan.WIND.high());

  /**
   * Finds them, in whole knots.
   *
   * @param study the run
   * @param boundaryMargin extra rate of descent to be left before the ring state, m/s
   * @param leastAirspeed airspeed to be kept in any case, m/s
   * @return the airspeeds, from the first knot from which on all knots keep the boundary margin and
   *     which has the power, but not before that to be kept in any case, to the last with the
   *     power; empty where there is none
   */
  public static Optional<RunLimits> find(
      RunStudy study, double boundaryMargin, double leastAirspeed) {
    int clear = FASTEST_KT + 1;
    while (clear > 0 && keeps(study.boundaryMargin(Unit.KNOT.toSi(clear - 1)), boundaryMargin)) {
      clear--;
    }
    int least = Math.max(clear, (int) Math.ceil(Unit.KNOT.fromSi(leastAirspeed) - 1e-9));
    while (least <= FASTEST_KT && !hasPower(study, least)) {
      least++;
    }
    if (least > FASTEST_KT) {
      return Optional.empty();
    }
    int greatest = least;
    while (greatest < FASTEST_KT && hasPower(study, greatest + 1)) {
      greatest++;
    }
    return Optional.of(new RunLimits(least, greatest));
  }

  private static boolean keeps(OptionalDouble margin, double wanted) {
    return margin.isEmpty() || margin.getAsDouble() >= wanted;
  }

  private static boolean hasPower(RunStudy study, int knots) {
    OptionalDouble power = study.power(Unit.KNOT.toSi(knots));
    return power.isPresent()
        && power.getAsDouble() <= study.plan().craft().continuousPower(study.plan().air());
  }

  /**
   * Whether an airspeed is too low.
   *
   * @param airspeed the airspeed, m/s
   * @return true below the least
   */
  public boolean below(double airspeed) {
    return !(airspeed >= Unit.KNOT.toSi(leastKt));
  }

  /**
   * Whether the airspeed of a run is too low, or comes from behind.
   *
   * @param plan the run
   * @param track direction flown over the ground, rad clockwise from north
   * @return true if in gusts and lulls it falls below the least, or gusts overtake the run
   */
  public boolean below(RunPlan plan, double track) {
    return plan.isOvertaken(track) || below(plan.leastAirspeed(track));
  }

  /**
   * Whether an airspeed is too high.
   *
   * @param airspeed the airspeed, m/s
   * @return true above the greatest
   */
  public boolean above(double airspeed) {
    return !(airspeed <= Unit.KNOT.toSi(greatestKt));
  }

  /**
   * The greatest ground speed on a track, no greater than planned, at which the airspeed stays
   * between these limits in gusts and lulls.
   *
   * @param plan the run
   * @param track direction flown over the ground, rad clockwise from north
   * @return the ground speed, m/s, whole knots; empty if there is none
   */
  public OptionalDouble greatestGroundSpeed(RunPlan plan, double track) {
    for (int knots = (int) Unit.KNOT.fromSi(plan.groundSpeed()); knots >= 0; knots--) {
      RunPlan slower = plan.withGroundSpeed(Unit.KNOT.toSi(knots));
      if (!above(slower.greatestAirspeed(track)) && !below(slower, track)) {
        return OptionalDouble.of(Unit.KNOT.toSi(knots));
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
   * @return the ground speed, m/s, whole knots; empty if there is none
   */
  public OptionalDouble leastGroundSpeed(RunPlan plan, double track) {
    int fastest = (int) RunPlan.GROUND_SPEED.quantity().high();
    for (int knots = (int) Math.ceil(Unit.KNOT.fromSi(plan.groundSpeed()));
        knots <= fastest;
        knots++) {
      RunPlan faster = plan.withGroundSpeed(Unit.KNOT.toSi(knots));
      if (!above(faster.greatestAirspeed(track)) && !below(faster, track)) {
        return OptionalDouble.of(Unit.KNOT.toSi(knots));
      }
    }
    return OptionalDouble.empty();
  }
}
