package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.run.AirspeedCheck;
import io.github.ringstate.study.run.Finding;
import io.github.ringstate.study.run.HeightCheck;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunPlan;
import io.github.ringstate.study.run.TurnCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A track as the reason for its verdict speaks of it. None calls a run or a height safe. */
record TrackFacts(
    String minimumAirspeed,
    String lowAirspeed,
    String maximumAirspeed,
    boolean overtaken,
    String limit,
    String fastest,
    String planned,
    String instead,
    String downwind,
    boolean lowInATurn,
    String downwindGround,
    boolean met,
    String loss,
    String half,
    boolean seemsCovered,
    String height,
    String margin,
    String lowest,
    String needed,
    boolean halfCovered,
    boolean forMinutes) {

  static TrackFacts of(RunsRequest request, RunAnalysis analysis, RunRow row, UnitSystem units) {
    RunPlan plan = request.plan();
    RunJudgement judgement = row.judgement();
    TurnCheck turn = judgement.turn();
    double most = analysis.worst().map(RunLoss::most).orElse(0.0);
    double half = analysis.worst().map(RunLoss::half).orElse(0.0);
    String limit = analysis.limits().map(keep -> units.speedInWords(keep.minimum())).orElse("");
    HeightCheck height = judgement.height();
    return new TrackFacts(
        units.speedInWords(row.track().minimumAirspeed()),
        low(units.speedInWords(row.track().minimumAirspeed()), limit),
        units.speedInWords(row.track().maximumAirspeed()),
        plan.isOvertaken(row.track().triangle().track()),
        limit,
        units.speedInWords(RunPlan.GROUND_SPEED.unit().toSi(RunPlan.GROUND_SPEED.high())),
        units.typed(Unit.KNOT, plan.groundSpeed()),
        speed(units, judgement.airspeed().groundSpeed()),
        low(units.speedInWords(turn.airspeed()), limit),
        turn.finding() == Finding.HOLDS_WITH_A_LIMIT,
        speed(units, turn.groundSpeed()),
        analysis.worst().isPresent(),
        Double.isInfinite(most) ? "" : units.lossInWords(most),
        Double.isInfinite(half) ? "everything" : units.lossInWords(half) + " or more",
        units.roundedLoss(most) + whole(units, plan.margin()) <= whole(units, plan.height()),
        units.lengthInWords(plan.height()),
        units.lengthInWords(plan.margin()),
        units.typed(Unit.FOOT, plan.lowestHeight()),
        analysis.neededForLoss(request, units),
        height.reason() == HeightCheck.Reason.HALF_COVERED,
        judgement.hover().finding() == Finding.HOLDS_WITH_A_LIMIT);
  }

  private static String speed(UnitSystem units, OptionalDouble speed) {
    return speed.isPresent() ? units.speedInWords(speed.getAsDouble()) : "";
  }

  /** An airspeed below the minimum, whatever the rounding. */
  private static String low(String airspeed, String limit) {
    return (airspeed.equals(limit) ? "just under " : "") + airspeed;
  }

  private static double whole(UnitSystem units, double metres) {
    return Math.rint(units.length().fromSi(metres));
  }

  /**
   * The reason for the verdict.
   *
   * @param row the track
   * @return one sentence
   */
  String reason(RunRow row) {
    return switch (row.verdict()) {
      case FLY -> RunsMessages.SAY.asPlanned(this);
      case FLY_WITH_A_LIMIT -> RunsMessages.SAY.airspeedKept(this);
      case NOT_AS_PLANNED ->
          row.judgement().airspeed().reason() == AirspeedCheck.Reason.HIGH
              ? RunsMessages.SAY.slowerOverGround(this)
              : RunsMessages.SAY.fasterOverGround(this);
      case DO_NOT_FLY -> Words.capital(String.join(", and ", against(row.judgement()))) + ".";
    };
  }

  /** All that speaks against the run. */
  private List<String> against(RunJudgement judgement) {
    List<String> against = new ArrayList<>();
    switch (judgement.airspeed().reason()) {
      case NO_AIRSPEED -> against.add(RunsMessages.SAY.noAirspeed());
      case LOW -> against.add(RunsMessages.SAY.tooSlow(this));
      case HIGH -> against.add(RunsMessages.SAY.tooFast(this));
      case KEPT -> {}
    }
    switch (judgement.height().reason()) {
      case BELOW_LOWEST -> against.add(RunsMessages.SAY.belowLowest(this));
      case NOT_COVERED ->
          against.add(met ? RunsMessages.SAY.notCovered(this) : RunsMessages.SAY.noRoom(this));
      case COVERED, HALF_COVERED -> {}
    }
    if (judgement.hover().finding() == Finding.FAILS) {
      against.add(RunsMessages.SAY.noPowerToHover());
    }
    return against;
  }
}
