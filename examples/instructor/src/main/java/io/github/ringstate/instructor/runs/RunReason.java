package io.github.ringstate.instructor.runs;

import io.github.ringstate.instructor.report.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.RunLimits;
import io.github.ringstate.study.RunPlan;
import java.util.Locale;

/** The reason for a verdict, in one sentence. None calls a run or a height safe. */
final class RunReason {

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
              "in gusts the airspeed stays at "
                  + least(row)
                  + " or more, and holding the ground speed through a turn downwind does not lead"
                  + " into the ring state in this model";
          case TURN_LOSES_LESS_THAN_THE_HEIGHT ->
              "in gusts the airspeed stays at "
                  + least(row)
                  + " or more, and "
                  + turn()
                  + " loses "
                  + loss(row)
                  + " of the "
                  + height();
          case TURN_LOSES_THE_HEIGHT ->
              "keep at least "
                  + limit()
                  + " airspeed in every turn: "
                  + turn()
                  + " loses "
                  + loss(row)
                  + " with "
                  + height()
                  + " below";
          case AIRSPEED_LOW ->
              "in gusts the airspeed falls to "
                  + least(row)
                  + "; keep at least "
                  + limit()
                  + ", which takes "
                  + groundSpeed(row)
                  + " over the ground on this track"
                  + (row.loss().isPresent()
                      ? ": a ring state met from here loses " + loss(row) + " of the " + height()
                      : "");
          case AIRSPEED_LOW_AND_HEIGHT_LOST ->
              "in gusts the airspeed falls to "
                  + least(row)
                  + ", below the "
                  + limit()
                  + " that keep the margins, and a ring state met from here loses "
                  + loss(row)
                  + " with "
                  + height()
                  + " below";
          case AIRSPEED_LOW_AT_ANY_GROUND_SPEED ->
              "in gusts the airspeed falls to "
                  + least(row)
                  + ", and no ground speed up to "
                  + speed(Unit.KNOT.toSi(RunPlan.GROUND_SPEED.quantity().high()))
                  + " keeps it at "
                  + limit()
                  + " or more on this track";
          case AIRSPEED_HIGH ->
              "in gusts the airspeed rises to "
                  + speed(row.track().greatestAirspeed())
                  + ", where continuous power does not suffice; keep to "
                  + speed(row.judgement().greatestGroundSpeed().getAsDouble())
                  + " over the ground or less";
          case POWER ->
              "at no airspeed of such a run does continuous power suffice with the margin to the"
                  + " ring state kept";
        };
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  private String turn() {
    return "holding the ground speed through a turn downwind leaves "
        + speed(analysis.airspeedDownwind())
        + " airspeed and";
  }

  private String groundSpeed(RunRow row) {
    RunLimits limits = analysis.limits().orElseThrow();
    return speed(
        limits.leastGroundSpeed(request.plan(), row.track().triangle().track()).getAsDouble());
  }

  private String least(RunRow row) {
    return speed(row.track().leastAirspeed());
  }

  private String limit() {
    return speed(Unit.KNOT.toSi(analysis.limits().orElseThrow().leastKt()));
  }

  private String height() {
    return units.length(request.plan().height()) + " " + units.length().symbol();
  }

  /** As people should read it: no finer than the model is good. */
  private String loss(RunRow row) {
    return row.isNotArrested()
        ? "everything, for more than 5 in 100 of the pilots did not arrest the descent,"
        : units.lost(row.lossFt().getAsDouble()) + " " + units.length().symbol();
  }

  private String speed(double si) {
    return units.speed(si) + " " + units.speed().symbol();
  }
}
