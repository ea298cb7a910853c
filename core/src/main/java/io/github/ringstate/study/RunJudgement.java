package io.github.ringstate.study;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A verdict with its ground.
 *
 * @param verdict the verdict
 * @param ground why
 * @param leastAirspeedKt the limit of airspeed, kt; empty unless that is the limit
 * @param greatestGroundSpeed the limit of ground speed, m/s; empty unless that is the limit
 */
public record RunJudgement(
    RunVerdict verdict,
    Ground ground,
    OptionalDouble leastAirspeedKt,
    OptionalDouble greatestGroundSpeed) {

  /** Why a verdict is what it is. */
  public enum Ground {
    /** The margins hold in gusts, and a turn downwind does not lead into the ring state. */
    MARGINS_HOLD,
    /** As before, but the turn does; the height is more than the loss. */
    TURN_LOSES_LESS_THAN_THE_HEIGHT,
    /** The turn leads into the ring state, and the height is not more than the loss. */
    TURN_LOSES_THE_HEIGHT,
    /** In gusts the airspeed falls below the limits; the height is more than the loss. */
    AIRSPEED_LOW,
    /** As before, but the height is not more than the loss. */
    AIRSPEED_LOW_AND_HEIGHT_LOST,
    /** As before, but no ground speed on this track gives the airspeed. */
    AIRSPEED_LOW_AT_ANY_GROUND_SPEED,
    /** In gusts the airspeed rises to where the power does not suffice. */
    AIRSPEED_HIGH,
    /** The power does not suffice at any airspeed that keeps away from the ring state. */
    POWER
  }

  /**
   * Judges a run.
   *
   * @param plan the run
   * @param limits the airspeeds that keep the margins; empty where there are none
   * @param track the run on a track
   * @param loss altitude loss to reckon with if the ground speed is held downwind, m; infinite
   *     where the descent is not arrested; empty where the ring state is not met
   * @return the judgement
   */
  public static RunJudgement of(
      RunPlan plan, Optional<RunLimits> limits, RunTrack track, OptionalDouble loss) {
    if (limits.isEmpty()) {
      return no(Ground.POWER);
    }
    RunLimits keep = limits.get();
    boolean covered = loss.isEmpty() || loss.getAsDouble() < plan.height();
    double direction = track.triangle().track();
    if (keep.below(track.leastAirspeed())) {
      if (!covered) {
        return no(Ground.AIRSPEED_LOW_AND_HEIGHT_LOST);
      }
      return keep.leastGroundSpeed(plan, direction).isPresent()
          ? atLeast(keep, Ground.AIRSPEED_LOW)
          : no(Ground.AIRSPEED_LOW_AT_ANY_GROUND_SPEED);
    }
    if (keep.above(track.greatestAirspeed())) {
      OptionalDouble slower = keep.greatestGroundSpeed(plan, direction);
      return slower.isPresent()
          ? new RunJudgement(
              RunVerdict.FLY_WITH_A_LIMIT, Ground.AIRSPEED_HIGH, OptionalDouble.empty(), slower)
          : no(Ground.POWER);
    }
    if (!covered) {
      return atLeast(keep, Ground.TURN_LOSES_THE_HEIGHT);
    }
    return new RunJudgement(
        RunVerdict.FLY,
        loss.isPresent() ? Ground.TURN_LOSES_LESS_THAN_THE_HEIGHT : Ground.MARGINS_HOLD,
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private static RunJudgement atLeast(RunLimits limits, Ground ground) {
    return new RunJudgement(
        RunVerdict.FLY_WITH_A_LIMIT,
        ground,
        OptionalDouble.of(limits.leastKt()),
        OptionalDouble.empty());
  }

  private static RunJudgement no(Ground ground) {
    return new RunJudgement(
        RunVerdict.DO_NOT_FLY, ground, OptionalDouble.empty(), OptionalDouble.empty());
  }
}
