package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.Escape;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunPlan;
import io.github.ringstate.study.run.RunTrack;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One track of a run.
 *
 * @param track what it takes
 * @param loss altitude loss of half and of 95 per cent of the pilots; empty where the ring state is
 *     not met
 * @param escape the way out with the shortest exposure
 * @param judgement the verdict
 */
record RunRow(
    RunTrack track, Optional<RunLoss> loss, Optional<Escape> escape, RunJudgement judgement) {

  double trackDeg() {
    return Math.rint(Unit.DEGREE.fromSi(track.triangle().track()));
  }

  /** A part of the power in per cent; a text of one's own choice where there is no such power. */
  static String wholePercent(double margin, String none) {
    return Double.isInfinite(margin) ? none : Decimals.fixed(Unit.PERCENT.fromSi(margin), 0);
  }

  /** The height lost, m; empty where the ring state is not met or the descent not arrested. */
  OptionalDouble altitudeLoss() {
    return loss.isEmpty() || isNotArrested()
        ? OptionalDouble.empty()
        : OptionalDouble.of(loss.get().most());
  }

  boolean isNotArrested() {
    return loss.isPresent() && Double.isInfinite(loss.get().most());
  }

  /** Whether the ring state is met and the height does not cover the loss. */
  boolean isOver(RunPlan plan) {
    return loss.isPresent() && !plan.covers(loss.get().most());
  }
}
