package io.github.ringstate.instructor.runs;

import io.github.ringstate.instructor.loss.Feet;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.RunLimits;
import io.github.ringstate.study.RunPlan;
import java.util.Locale;

/** The reason for a verdict, in one sentence. None calls a run or a height safe. */
final class RunReason {

  private final RunsRequest request;
  private final RunAnalysis analysis;

  RunReason(RunsRequest request, RunAnalysis analysis) {
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
                  + Decimals.brief(RunPlan.GROUND_SPEED.quantity().high())
                  + " kt keeps it at "
                  + limit()
                  + " or more on this track";
          case AIRSPEED_HIGH ->
              "in gusts the airspeed rises to "
                  + knots(row.track().greatestAirspeed())
                  + ", where continuous power does not suffice; keep to "
                  + knots(row.judgement().greatestGroundSpeed().getAsDouble())
                  + " over the ground or less";
          case POWER ->
              "at no airspeed of such a run does continuous power suffice with the margin to the"
                  + " ring state kept";
        };
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  private String turn() {
    return "holding the ground speed through a turn downwind leaves "
        + knots(analysis.airspeedDownwind())
        + " airspeed and";
  }

  private String groundSpeed(RunRow row) {
    RunLimits limits = analysis.limits().orElseThrow();
    return knots(
        limits.leastGroundSpeed(request.plan(), row.track().triangle().track()).getAsDouble());
  }

  private String least(RunRow row) {
    return knots(row.track().leastAirspeed());
  }

  private String limit() {
    return analysis.limits().orElseThrow().leastKt() + " kt";
  }

  private String height() {
    return Decimals.fixed(Unit.FOOT.fromSi(request.plan().height()), 0) + " ft";
  }

  /** As people should read it: no finer than the model is good. */
  private static String loss(RunRow row) {
    return row.isNotArrested()
        ? "everything, for more than 5 in 100 of the pilots did not arrest the descent,"
        : Feet.text(row.lossFt().getAsDouble()) + " ft";
  }

  private static String knots(double speed) {
    return Decimals.fixed(Unit.KNOT.fromSi(speed), 0) + " kt";
  }
}
