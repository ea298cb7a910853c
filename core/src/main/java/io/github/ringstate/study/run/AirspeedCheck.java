package io.github.ringstate.study.run;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the airspeed of a run on a track keeps the margins to the ring state and to the
 * continuous power, in gusts and lulls.
 *
 * @param finding how it comes out
 * @param reason why
 * @param groundSpeed the ground speed nearest to the one planned at which the airspeed is kept,
 *     m/s; empty where the one planned keeps it, or none does
 */
public record AirspeedCheck(Finding finding, Reason reason, OptionalDouble groundSpeed) {

  /** What becomes of the airspeed. */
  public enum Reason {
    /** It stays within the limits. */
    KEPT,
    /** It falls below them, or gusts from behind overtake the run. */
    LOW,
    /** It rises above them, to where the continuous power does not suffice. */
    HIGH,
    /** There are no limits: no airspeed keeps both margins. */
    NO_AIRSPEED
  }

  /**
   * Checks the airspeed.
   *
   * @param plan the run
   * @param limits the airspeeds that keep the margins; empty where there are none
   * @param track direction flown over the ground, rad clockwise from north
   * @return what becomes of it
   */
  public static AirspeedCheck of(RunPlan plan, Optional<RunLimits> limits, double track) {
    if (limits.isEmpty()) {
      return new AirspeedCheck(Finding.FAILS, Reason.NO_AIRSPEED, OptionalDouble.empty());
    }
    RunLimits keep = limits.get();
    if (keep.below(plan, track)) {
      return at(Reason.LOW, keep.minimumGroundSpeed(plan, track));
    }
    if (keep.above(plan.maximumAirspeed(track))) {
      return at(Reason.HIGH, keep.maximumGroundSpeed(plan, track));
    }
    return new AirspeedCheck(Finding.HOLDS, Reason.KEPT, OptionalDouble.empty());
  }

  private static AirspeedCheck at(Reason reason, OptionalDouble groundSpeed) {
    return new AirspeedCheck(
        groundSpeed.isPresent() ? Finding.NOT_AS_PLANNED : Finding.FAILS, reason, groundSpeed);
  }
}
