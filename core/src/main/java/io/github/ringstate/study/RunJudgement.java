package io.github.ringstate.study;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A verdict with its ground.
 *
 * @param verdict the verdict
 * @param ground why
 * @param loss the loss that it reckons with; empty where the ring state is not reckoned with
 * @param leastAirspeedKt the limit of airspeed, kt; empty unless that is the limit
 * @param greatestGroundSpeed the limit of ground speed, m/s; empty unless that is the limit
 */
public record RunJudgement(
    RunVerdict verdict,
    Ground ground,
    Optional<RunLoss> loss,
    OptionalDouble leastAirspeedKt,
    OptionalDouble greatestGroundSpeed) {

  /** Why a verdict is what it is. A height covers a loss if the margin is left below it. */
  public enum Ground {
    /** The margins hold in gusts, and in a turn downwind as well. */
    MARGINS_HOLD,
    /** The turn leads into the ring state, and the height covers what most pilots lose. */
    HEIGHT_COVERS_THE_TURN,
    /** No track leads into the ring state, but in the turn the airspeed falls below the limits. */
    TURN_LOW,
    /** As one of these, but the short-time power does not suffice to hover. */
    NO_HOVER,
    /** The turn leads into the ring state, and the height covers what half of the pilots lose. */
    HEIGHT_COVERS_THE_TURN_OF_HALF,
    /** As before, and the short-time power does not suffice to hover. */
    TURN_OF_HALF_AND_NO_HOVER,
    /** The turn leads into the ring state, and the height does not even cover that. */
    TURN_LOSES_THE_HEIGHT,
    /**
     * In gusts the airspeed falls below the limits, or comes from behind; the height covers what
     * most pilots lose.
     */
    AIRSPEED_LOW,
    /** As before, but the height does not cover it. */
    AIRSPEED_LOW_AND_HEIGHT_LOST,
    /** As before, but the short-time power does not suffice to hover. */
    AIRSPEED_LOW_AND_NO_HOVER,
    /** As before, but no ground speed on this track gives the airspeed. */
    AIRSPEED_LOW_AT_ANY_GROUND_SPEED,
    /** In gusts the airspeed rises to where the power does not suffice. */
    AIRSPEED_HIGH,
    /** As before, and the turn loses what the height does not cover. */
    AIRSPEED_HIGH_AND_HEIGHT_LOST,
    /** In gusts the airspeed rises so, and the short-time power does not suffice to hover. */
    AIRSPEED_HIGH_AND_NO_HOVER,
    /** The power does not suffice at any airspeed that keeps away from the ring state. */
    POWER
  }

  /**
   * Judges a run. Three things keep the craft from the ground: an airspeed away from the ring
   * state, a height that covers what it costs to meet it all the same, and the power to hover. A
   * run is flown as planned where all hold; where one is short, within a limit; where two are, not
   * at all. An airspeed that nothing but the pilot keeps does not make up for a height that half of
   * the pilots would lose (assumed).
   *
   * <p>Whether a track just meets the ring state or just misses it turns on a knot, and the slower
   * track may lose the less: the descent has not built up as far. A track below the airspeeds that
   * keep the margins, or in a turn below them, is therefore judged as if it lost what the worst
   * track of the run does, so that the loss never makes the slower of two tracks the milder.
   *
   * @param study the run
   * @param limits the airspeeds that keep the margins; empty where there are none
   * @param track the run on a track
   * @param loss altitude loss if the ring state is met from this track; empty where it is not met
   * @param worst the worst such loss on any track; empty where it is met on none
   * @return the judgement
   */
  public static RunJudgement of(
      RunStudy study,
      Optional<RunLimits> limits,
      RunTrack track,
      Optional<RunLoss> loss,
      Optional<RunLoss> worst) {
    if (limits.isEmpty()) {
      return no(Ground.POWER, loss);
    }
    RunLimits keep = limits.get();
    boolean low =
        keep.below(study.plan(), track.triangle().track()) || keep.below(study.airspeedDownwind());
    return judge(study, keep, track, low ? worst : loss);
  }

  private static RunJudgement judge(
      RunStudy study, RunLimits keep, RunTrack track, Optional<RunLoss> loss) {
    RunPlan plan = study.plan();
    boolean covered = loss.isEmpty() || plan.covers(loss.get().most());
    double direction = track.triangle().track();
    if (keep.below(plan, direction)) {
      if (!covered) {
        return no(Ground.AIRSPEED_LOW_AND_HEIGHT_LOST, loss);
      }
      if (!study.canHover()) {
        return no(Ground.AIRSPEED_LOW_AND_NO_HOVER, loss);
      }
      return keep.leastGroundSpeed(plan, direction).isPresent()
          ? atLeast(keep, Ground.AIRSPEED_LOW, loss)
          : no(Ground.AIRSPEED_LOW_AT_ANY_GROUND_SPEED, loss);
    }
    if (keep.above(track.greatestAirspeed())) {
      if (!covered) {
        return no(Ground.AIRSPEED_HIGH_AND_HEIGHT_LOST, loss);
      }
      if (!study.canHover()) {
        return no(Ground.AIRSPEED_HIGH_AND_NO_HOVER, loss);
      }
      OptionalDouble slower = keep.greatestGroundSpeed(plan, direction);
      return slower.isPresent()
          ? new RunJudgement(
              RunVerdict.FLY_WITH_A_LIMIT,
              Ground.AIRSPEED_HIGH,
              loss,
              OptionalDouble.empty(),
              slower)
          : no(Ground.POWER, loss);
    }
    if (!covered) {
      if (!plan.covers(loss.get().half())) {
        return no(Ground.TURN_LOSES_THE_HEIGHT, loss);
      }
      return study.canHover()
          ? atLeast(keep, Ground.HEIGHT_COVERS_THE_TURN_OF_HALF, loss)
          : no(Ground.TURN_OF_HALF_AND_NO_HOVER, loss);
    }
    if (!study.canHover()) {
      return atLeast(keep, Ground.NO_HOVER, loss);
    }
    if (loss.isEmpty() && keep.below(study.airspeedDownwind())) {
      return atLeast(keep, Ground.TURN_LOW, loss);
    }
    return new RunJudgement(
        RunVerdict.FLY,
        loss.isPresent() ? Ground.HEIGHT_COVERS_THE_TURN : Ground.MARGINS_HOLD,
        loss,
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private static RunJudgement atLeast(RunLimits limits, Ground ground, Optional<RunLoss> loss) {
    return new RunJudgement(
        RunVerdict.FLY_WITH_A_LIMIT,
        ground,
        loss,
        OptionalDouble.of(limits.leastKt()),
        OptionalDouble.empty());
  }

  private static RunJudgement no(Ground ground, Optional<RunLoss> loss) {
    return new RunJudgement(
        RunVerdict.DO_NOT_FLY, ground, loss, OptionalDouble.empty(), OptionalDouble.empty());
  }
}
