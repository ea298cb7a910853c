package io.github.ringstate.study.run;

import java.util.Optional;

/**
 * Whether the height of a run is one to fly at, and covers, margin included, what it costs to meet
 * the ring state.
 *
 * @param finding how it comes out
 * @param reason why
 * @param needed the least height that holds in this check, m; infinite where the descent is not
 *     arrested
 */
public record HeightCheck(Finding finding, Reason reason, double needed) {

  /** What becomes of the height. */
  public enum Reason {
    /** It is not below the lowest, and covers what most pilots lose if the ring state is met. */
    COVERED,
    /** It is below the lowest height of runs. */
    BELOW_LOWEST,
    /** It covers what half of the pilots lose, but not what most of them do. */
    HALF_COVERED,
    /** It does not even cover what half of the pilots lose. */
    NOT_COVERED
  }

  /**
   * Checks the height. It is judged on every track by the worst loss on any: whether a track just
   * meets the ring state or just misses it turns on a knot, the slower track may lose the less
   * because the descent has not built up as far, and a crew that turns leaves its track.
   *
   * @param plan the run
   * @param worst the worst loss on any track; empty where the ring state is met on none, when the
   *     margin and the lowest height are asked for all the same
   * @return what becomes of the height
   */
  public static HeightCheck of(RunPlan plan, Optional<RunLoss> worst) {
    double most = worst.map(RunLoss::most).orElse(0.0);
    double half = worst.map(RunLoss::half).orElse(0.0);
    double needed = Math.max(plan.lowestHeight(), most + plan.margin());
    if (plan.height() < plan.lowestHeight()) {
      return new HeightCheck(Finding.FAILS, Reason.BELOW_LOWEST, needed);
    }
    if (plan.covers(most)) {
      return new HeightCheck(Finding.HOLDS, Reason.COVERED, needed);
    }
    return plan.covers(half)
        ? new HeightCheck(Finding.HOLDS_WITH_A_LIMIT, Reason.HALF_COVERED, needed)
        : new HeightCheck(Finding.FAILS, Reason.NOT_COVERED, needed);
  }
}
