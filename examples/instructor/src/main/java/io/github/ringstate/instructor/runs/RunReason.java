package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.RunLimits;
import io.github.ringstate.study.RunLoss;
import io.github.ringstate.study.RunPlan;
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
        switch (row.judgement().ground()) {
          case MARGINS_HOLD ->
              stays(row)
                  + ", and at "
                  + speed(analysis.airspeedDownwind())
                  + " or more if the ground speed is held through a turn downwind";
          case HEIGHT_COVERS_THE_TURN -> stays(row) + ", and " + turn(row) + of(row);
          case TURN_LOW ->
              "keep at least "
                  + limit()
                  + " airspeed in every turn: with the ground speed held through one downwind, "
                  + low(analysis.airspeedDownwind())
                  + " are left";
          case NO_HOVER -> "keep at least " + limit() + " airspeed, turns included: " + NO_HOVER;
          case HEIGHT_COVERS_THE_TURN_OF_HALF ->
              "keep at least " + limit() + " airspeed in every turn: " + turn(row) + with(row);
          case TURN_OF_HALF_AND_NO_HOVER -> turn(row) + with(row) + ", and " + NO_HOVER;
          case TURN_LOSES_THE_HEIGHT ->
              turn(row) + with(row) + ", and half of the pilots lose " + half(row);
          case AIRSPEED_LOW ->
              falls(row)
                  + "; keep at least "
                  + limit()
                  + ", which takes "
                  + groundSpeed(row)
                  + " over the ground on this track"
                  + (row.judgement().loss().isPresent() ? ": " + met(row) + of(row) : "");
          case AIRSPEED_LOW_AND_HEIGHT_LOST ->
              falls(row)
                  + ", where at least "
                  + limit()
                  + " keep the margins, and "
                  + met(row)
                  + with(row);
          case AIRSPEED_LOW_AND_NO_HOVER -> falls(row) + ", and " + NO_HOVER;
          case AIRSPEED_LOW_AT_ANY_GROUND_SPEED ->
              falls(row)
                  + ", and no ground speed up to "
                  + speed(Unit.KNOT.toSi(RunPlan.GROUND_SPEED.quantity().high()))
                  + " keeps the airspeed at "
                  + limit()
                  + " or more on this track";
          case AIRSPEED_HIGH ->
              rises(row)
                  + "; keep to "
                  + speed(row.judgement().greatestGroundSpeed().getAsDouble())
                  + " over the ground or less";
          case AIRSPEED_HIGH_AND_HEIGHT_LOST -> rises(row) + ", and " + turn(row) + with(row);
          case AIRSPEED_HIGH_AND_NO_HOVER -> rises(row) + ", and " + NO_HOVER;
          case POWER ->
              "at no airspeed of such a run does continuous power suffice with the margin to the"
                  + " ring state kept";
        };
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
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
    return row.loss().map(this::read).equals(row.judgement().loss().map(this::read));
  }

  private double read(RunLoss loss) {
    return units.rounded(Unit.FOOT.fromSi(loss.most()));
  }

  private String groundSpeed(RunRow row) {
    RunLimits limits = analysis.limits().orElseThrow();
    return speed(
        limits.leastGroundSpeed(request.plan(), row.track().triangle().track()).getAsDouble());
  }

  /** An airspeed below the least to keep, whatever the rounding. */
  private String low(double airspeed) {
    return (speed(airspeed).equals(limit()) ? "just under " : "") + speed(airspeed);
  }

  private String limit() {
    return speed(Unit.KNOT.toSi(analysis.limits().orElseThrow().leastKt()));
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
    RunLoss loss = row.judgement().loss().orElseThrow();
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
    double most = row.judgement().loss().orElseThrow().most();
    return Double.isInfinite(most)
        ? "everything, for more than 5 in 100 of the pilots did not arrest the descent,"
        : lost(most);
  }

  private String half(RunRow row) {
    double half = row.judgement().loss().orElseThrow().half();
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
