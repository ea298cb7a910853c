package io.github.ringstate.study.run;

import java.util.Optional;

/**
 * Whether the height of a run covers, margin included, what it costs to meet the ring state.
 *
 * @param finding how it comes out
 * @param reason why
 * @param loss the loss that it reckons with; empty where the ring state is not reckoned with
 */
public record HeightCheck(Finding finding, Reason reason, Optional<RunLoss> loss) {

  /** What becomes of the height. */
  public enum Reason {
    /** The ring state is not met, and a turn downwind keeps the airspeed. */
    NO_RING_STATE,
    /** The ring state is met, and the height covers what most pilots lose. */
    COVERED,
    /** The ring state is not met, but in a turn downwind the airspeed falls below the limits. */
    LOW_IN_A_TURN,
    /**
     * The height does not cover what most pilots lose: short if it covers what half of them lose,
     * else failed.
     */
    NOT_COVERED
  }

  /**
   * Checks the height.
   *
   * <p>Whether a track just meets the ring state or just misses it turns on a knot, and the slower
   * track may lose the less: the descent has not built up as far. A track below the airspeeds that
   * keep the margins, or in a turn below them, is therefore judged as if it lost what the worst
   * track of the run does, so that the loss never makes the slower of two tracks the milder.
   *
   * @param study the run
   * @param limits the airspeeds that keep the margins; empty where there are none
   * @param track direction flown over the ground, rad clockwise from north
   * @param own altitude loss if the ring state is met from this track; empty where it is not met
   * @param worst the worst such loss on any track; empty where it is met on none
   * @return what becomes of the height
   */
  public static HeightCheck of(
      RunStudy study,
      Optional<RunLimits> limits,
      double track,
      Optional<RunLoss> own,
      Optional<RunLoss> worst) {
    RunPlan plan = study.plan();
    boolean lowInATurn = limits.isPresent() && limits.get().below(study.airspeedDownwind());
    boolean low = lowInATurn || (limits.isPresent() && limits.get().below(plan, track));
    Optional<RunLoss> loss = low ? worst : own;
    if (loss.isEmpty()) {
      return lowInATurn
          ? new HeightCheck(Finding.HOLDS_WITH_A_LIMIT, Reason.LOW_IN_A_TURN, loss)
          : new HeightCheck(Finding.HOLDS, Reason.NO_RING_STATE, loss);
    }
    if (plan.covers(loss.get().most())) {
      return new HeightCheck(Finding.HOLDS, Reason.COVERED, loss);
    }
    return new HeightCheck(
        plan.covers(loss.get().half()) ? Finding.SHORT : Finding.FAILS, Reason.NOT_COVERED, loss);
  }
}
