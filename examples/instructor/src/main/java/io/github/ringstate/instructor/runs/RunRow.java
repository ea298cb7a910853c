package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunTrack;
import io.github.ringstate.study.run.RunVerdict;
import java.util.Optional;

/**
 * One track of a run.
 *
 * @param track what it takes
 * @param own altitude loss of half and of 95 per cent of the pilots who meet the ring state from
 *     this track; empty where it is not met
 * @param judgement the verdict
 */
record RunRow(RunTrack track, Optional<RunLoss> own, RunJudgement judgement) {

  double trackDeg() {
    return Math.rint(Unit.DEGREE.fromSi(track.triangle().track()));
  }

  RunVerdict verdict() {
    return judgement.verdict();
  }

  /** A part of the power in per cent; a text of one's own choice where there is no such power. */
  static String wholePercent(double margin, String none) {
    return Double.isInfinite(margin) ? none : Decimals.fixed(Unit.PERCENT.fromSi(margin), 0);
  }
}
