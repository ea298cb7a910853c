package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.AirspeedCheck;
import io.github.ringstate.study.run.Finding;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The reason for a verdict, in one sentence. None calls a run or a height safe. */
final class RunReason {

  private static final String NO_HOVER =
      "short-time power does not suffice to hover out of ground effect in this air";

  private final RunsRequest request;
  private final RunAnalysis analysis;

  private final UnitSystem units;

  RunReason(RunsRequest request, RunAnalysis analysis, UnitSystem units) {
    this.units = units;
    this.request = request;
    this.analysis = analysis;
  }

  /**
   * The reason for the verdict on a track.
   *
   * @param row the track
   * @return one sentence
   */
  String sentence(RunRow row) {
    String text =
        switch (row.judgement().verdict()) {
          case FLY -> stays(row) + ", and " + through(row);
          case FLY_WITH_A_LIMIT -> within(row);
          case DO_NOT_FLY -> String.join(", and ", against(row));
        };
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  /** What becomes of a run that is flown as planned in a turn downwind. */
  private String through(RunRow row) {
    return row.judgement().height().loss().isPresent()
        ? turn(row) + of(row)
        : "at "
            + speed(analysis.airspeedDownwind())
            + " or more if the ground speed is held through a turn downwind";
  }

  /** The limit, and why. */
  private String within(RunRow row) {
    RunJudgement judgement = row.judgement();
    return switch (judgement.airspeed().reason()) {
      case LOW ->
          falls(row)
              + "; keep at least "
              + limit()
              + ", which takes "
              + speed(judgement.airspeed().groundSpeed().getAsDouble())
              + " over the ground on this track"
              + (judgement.height().loss().isPresent() ? ": " + met(row) + of(row) : "");
      case HIGH ->
          rises(row)
              + "; keep to "
              + speed(judgement.maximumGroundSpeed().getAsDouble())
              + " over the ground or less";
      case KEPT, NO_AIRSPEED ->
          "keep at least "
              + limit()
              + " airspeed"
              + (isShort(judgement.hover().finding())
                  ? ", turns included: " + NO_HOVER
                  : " in every turn: " + inATurn(row));
    };
  }

  private String inATurn(RunRow row) {
    return isShort(row.judgement().height().finding())
        ? turn(row) + with(row)
        : "with the ground speed held through one downwind, "
            + low(analysis.airspeedDownwind())
            + " are left";
  }

  /** What speaks against a run that is not flown: a clause of each check that does not hold. */
  private List<String> against(RunRow row) {
    RunJudgement judgement = row.judgement();
    boolean noHeight = isShort(judgement.height().finding());
    boolean noHover = isShort(judgement.hover().finding());
    List<String> clauses = new ArrayList<>();
    switch (judgement.airspeed().reason()) {
      case KEPT -> {}
      case LOW ->
          clauses.add(
              falls(row)
                  + (noHeight || noHover
                      ? ", where at least " + limit() + " keep the margins"
                      : ", and no ground speed up to "
                          + speed(Unit.KNOT.toSi(RunPlan.GROUND_SPEED.high()))
                          + " keeps the airspeed at "
                          + limit()
                          + " or more on this track"));
      case HIGH ->
          clauses.add(
              rises(row)
                  + (noHeight || noHover
                      ? ""
                      : ", and no lower ground speed keeps it between the limits on this track"));
      case NO_AIRSPEED -> {
        return List.of(
            "at no airspeed of such a run does continuous power suffice with the margin to the ring"
                + " state kept");
      }
    }
    if (noHeight) {
      boolean low = judgement.airspeed().reason() == AirspeedCheck.Reason.LOW;
      clauses.add((low ? met(row) : turn(row)) + with(row));
      if (clauses.size() == 1 && !noHover) {
        clauses.add("half of the pilots lose " + half(row));
      }
    }
    if (noHover) {
      clauses.add(NO_HOVER);
    }
    return clauses;
  }

  private static boolean isShort(Finding finding) {
    return finding.compareTo(Finding.SHORT) >= 0;
  }

  private String stays(RunRow row) {
    return "in gusts the airspeed stays at " + speed(row.track().leastAirspeed()) + " or more";
  }

  private String falls(RunRow row) {
    double least = row.track().leastAirspeed();
    return analysis.limits().orElseThrow().below(least)
        ? "in gusts the airspeed falls to " + low(least)
        : "in gusts the wind from behind is faster than the run";
  }

  private String rises(RunRow row) {
    return "in gusts the airspeed rises to "
        + speed(row.track().greatestAirspeed())
        + ", where continuous power does not suffice";
  }

  private String turn(RunRow row) {
    return "holding the ground speed through a turn downwind leaves "
        + speed(analysis.airspeedDownwind())
        + " airspeed and"
        + (isItsOwn(row) ? "" : ", from the worst track,");
  }

  private String met(RunRow row) {
    return "a ring state met from " + (isItsOwn(row) ? "here" : "the worst track");
  }

  /** Whether the loss that the verdict reckons with reads as that of the track itself. */
  private boolean isItsOwn(RunRow row) {
    return row.loss().map(this::read).equals(row.judgement().height().loss().map(this::read));
  }

  private double read(RunLoss loss) {
    return units.rounded(Unit.FOOT.fromSi(loss.most()));
  }

  /** An airspeed below the least to keep, whatever the rounding. */
  private String low(double airspeed) {
    return (speed(airspeed).equals(limit()) ? "just under " : "") + speed(airspeed);
  }

  private String limit() {
    return speed(analysis.limits().orElseThrow().minimum());
  }

  private String height() {
    return units.length(request.plan().height()) + " " + units.length().symbol();
  }

  private String of(RunRow row) {
    return " loses " + loss(row) + " of the " + height();
  }

  /** A loss that is not covered. */
  private String with(RunRow row) {
    RunPlan plan = request.plan();
    RunLoss loss = row.judgement().height().loss().orElseThrow();
    String lost = " loses " + (seemsCovered(loss) ? "a little more than " : "") + loss(row);
    return loss.most() < plan.height()
        ? lost
            + " of the "
            + height()
            + ", which leaves less than "
            + units.lengthInWords(plan.margin())
        : lost + " with " + height() + " below";
  }

  /** Whether a loss that is not covered reads as if it were. */
  private boolean seemsCovered(RunLoss loss) {
    RunPlan plan = request.plan();
    return read(loss) + whole(plan.margin()) <= whole(plan.height());
  }

  private double whole(double metres) {
    return Math.rint(units.length().fromSi(metres));
  }

  private String loss(RunRow row) {
    double most = row.judgement().height().loss().orElseThrow().most();
    return Double.isInfinite(most)
        ? "everything, for more than 5 in 100 of the pilots did not arrest the descent,"
        : lost(most);
  }

  private String half(RunRow row) {
    double half = row.judgement().height().loss().orElseThrow().half();
    return Double.isInfinite(half) ? "everything" : lost(half) + " or more";
  }

  /** As people should read it: no finer than the model is good. */
  private String lost(double metres) {
    return units.lost(Unit.FOOT.fromSi(metres)) + " " + units.length().symbol();
  }

  private String speed(double si) {
    return units.speed(si) + " " + units.speed().symbol();
  }
}
