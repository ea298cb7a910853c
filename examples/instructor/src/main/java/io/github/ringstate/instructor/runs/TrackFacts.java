package io.github.ringstate.instructor.runs;

import static io.github.ringstate.study.run.AirspeedCheck.Reason;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.run.Finding;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunPlan;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A track as the reason for its verdict speaks of it. None calls a run or a height safe. */
record TrackFacts(
    String minimumAirspeed,
    String maximumAirspeed,
    String lowAirspeed,
    String downwind,
    String lowDownwind,
    String limit,
    String groundSpeed,
    String fastest,
    String loss,
    String half,
    String height,
    String margin,
    boolean met,
    boolean ownLoss,
    boolean open,
    boolean seemsCovered,
    boolean leavesLittle,
    boolean overtaken,
    boolean low,
    boolean high,
    boolean kept,
    boolean noAirspeed,
    boolean noHeight,
    boolean noHover,
    boolean moreAgainst,
    boolean onlyHeight) {

  static TrackFacts of(RunsRequest request, RunAnalysis analysis, RunRow row, UnitSystem units) {
    RunPlan plan = request.plan();
    RunJudgement judgement = row.judgement();
    Optional<RunLoss> loss = judgement.height().loss();
    double most = loss.map(RunLoss::most).orElse(0.0);
    double half = loss.map(RunLoss::half).orElse(0.0);
    double least = row.track().minimumAirspeed();
    String limit = analysis.limits().map(keep -> units.speedInWords(keep.minimum())).orElse("");
    OptionalDouble other = judgement.airspeed().groundSpeed();
    Reason airspeed = judgement.airspeed().reason();
    boolean noHeight = isShort(judgement.height().finding());
    boolean noHover = isShort(judgement.hover().finding());
    return new TrackFacts(
        units.speedInWords(least),
        units.speedInWords(row.track().maximumAirspeed()),
        low(units.speedInWords(least), limit),
        units.speedInWords(analysis.airspeedDownwind()),
        low(units.speedInWords(analysis.airspeedDownwind()), limit),
        limit,
        other.isPresent() ? units.speedInWords(other.getAsDouble()) : "",
        units.speedInWords(RunPlan.GROUND_SPEED.unit().toSi(RunPlan.GROUND_SPEED.high())),
        Double.isInfinite(most) ? "" : units.lossInWords(most),
        Double.isInfinite(half) ? "everything" : units.lossInWords(half) + " or more",
        units.lengthInWords(plan.height()),
        units.lengthInWords(plan.margin()),
        loss.isPresent(),
        row.loss().map(read(units)).equals(loss.map(read(units))),
        Double.isInfinite(most),
        units.roundedLoss(most) + whole(units, plan.margin()) <= whole(units, plan.height()),
        most < plan.height(),
        analysis.limits().filter(limits -> !limits.below(least)).isPresent(),
        airspeed == Reason.LOW,
        airspeed == Reason.HIGH,
        airspeed == Reason.KEPT,
        airspeed == Reason.NO_AIRSPEED,
        noHeight && airspeed != Reason.NO_AIRSPEED,
        noHover && airspeed != Reason.NO_AIRSPEED,
        noHeight || noHover,
        airspeed == Reason.KEPT && noHeight && !noHover);
  }

  /** As a loss reads. */
  private static Function<RunLoss, Double> read(UnitSystem units) {
    return loss -> units.roundedLoss(loss.most());
  }

  private static boolean isShort(Finding finding) {
    return finding.compareTo(Finding.SHORT) >= 0;
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
   * @param judgement the verdict
   * @return one sentence
   */
  String reason(RunJudgement judgement) {
    return switch (judgement.verdict()) {
      case FLY -> RunsMessages.SAY.asPlanned(this);
      case FLY_WITH_A_LIMIT ->
          low
              ? RunsMessages.SAY.fasterOverGround(this)
              : high
                  ? RunsMessages.SAY.slowerOverGround(this)
                  : RunsMessages.SAY.airspeedKept(this);
      case DO_NOT_FLY -> Words.capital(RunsMessages.SAY.doNotFly(this));
    };
  }
}
