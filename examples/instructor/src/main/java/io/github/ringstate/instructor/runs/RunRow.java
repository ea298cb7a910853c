package io.github.ringstate.instructor.runs;

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

  double airspeedKt() {
    return Unit.KNOT.fromSi(track.triangle().airspeed());
  }

  double leastAirspeedKt() {
    return Unit.KNOT.fromSi(track.leastAirspeed());
  }

  double tailwindKt() {
    return Unit.KNOT.fromSi(track.triangle().tailwind());
  }

  double crosswindKt() {
    return Unit.KNOT.fromSi(track.triangle().crosswind());
  }

  OptionalDouble continuousMarginPct() {
    return percent(track.continuousMargin());
  }

  OptionalDouble shortTimeMarginPct() {
    return percent(track.shortTimeMargin());
  }

  static OptionalDouble percent(double margin) {
    return Double.isInfinite(margin)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Unit.PERCENT.fromSi(margin));
  }

  OptionalDouble boundaryMarginFpm() {
    return in(Unit.FOOT_PER_MINUTE, track.boundaryMargin());
  }

  /** Feet that were lost; empty where the ring state is not met or the descent not arrested. */
  OptionalDouble lossFt() {
    return loss.isEmpty() || isNotArrested()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Unit.FOOT.fromSi(loss.get().most()));
  }

  boolean isNotArrested() {
    return loss.isPresent() && Double.isInfinite(loss.get().most());
  }

  /** Whether the ring state is met and the height does not cover the loss. */
  boolean isOver(RunPlan plan) {
    return loss.isPresent() && !plan.covers(loss.get().most());
  }

  static OptionalDouble in(Unit unit, OptionalDouble si) {
    return si.isPresent() ? OptionalDouble.of(unit.fromSi(si.getAsDouble())) : si;
  }
}
