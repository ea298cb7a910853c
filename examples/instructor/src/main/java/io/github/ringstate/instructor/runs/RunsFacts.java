package io.github.ringstate.instructor.runs;

import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunPlan;
import java.util.Arrays;
import java.util.stream.Collectors;

/** A run as its messages speak of it: numbers with their units, and conditions. */
record RunsFacts(
    String craft,
    String loading,
    String densityAltitude,
    String hoverMargin,
    boolean shortOfPower,
    String groundSpeed,
    String height,
    String descent,
    String margin,
    boolean windy,
    String reported,
    String tenMetres,
    String wind,
    String gust,
    String exponent,
    String downwind,
    String best,
    String worst,
    String minimum,
    String sinkToRefuse,
    String technique,
    String techniqueWords,
    int pilots,
    String median,
    String ninety,
    String turnTime,
    String sectorAirspeed,
    String sectors,
    String rotation,
    String heightVelocity) {

  /**
   * The rate of descent from which handbooks warn of the ring state (FAA-H-8083-21B, 2019, quoted).
   */
  private static final double SINK_TO_REFUSE = Unit.FOOT_PER_MINUTE.toSi(300);

  private static final double REPORTED_AT = 10;

  static RunsFacts of(RunsRequest request, RunAnalysis analysis, UnitSystem units) {
    Conditions conditions = request.conditions();
    RunPlan plan = request.plan();
    Directions directions = new Directions(analysis);
    return new RunsFacts(
        conditions.craft().name() + ": " + conditions.craft().description(),
        conditions.loadAndAir(units),
        units.lengthInWords(conditions.air().densityAltitude()),
        RunRow.wholePercent(analysis.hoverMargin(), ""),
        conditions.hover().isShort(),
        units.typed(Unit.KNOT, plan.groundSpeed()),
        units.typed(Unit.FOOT, plan.height()),
        units.typed(Unit.FOOT_PER_MINUTE, plan.descent()),
        units.typed(Unit.FOOT, plan.margin()),
        plan.gust() > 0,
        request.reported().inWords(units),
        units.lengthInWords(REPORTED_AT),
        units.speedInWords(plan.windSpeed()),
        units.speedInWords(plan.gust()),
        Decimals.brief(request.reported().exponent()),
        units.speedInWords(analysis.airspeedDownwind()),
        directions.best(),
        directions.worst(),
        analysis.limits().map(limits -> units.speedInWords(limits.minimum())).orElse(""),
        units.verticalSpeedInWords(Math.max(plan.descent(), SINK_TO_REFUSE)),
        analysis.technique().name(),
        analysis.technique().description(plan.craft().sense()),
        request.pilots(),
        Decimals.brief(PilotState.DISTRACTED.median()),
        Decimals.brief(PilotState.DISTRACTED.ninetyPercent()),
        Decimals.brief(Downwind.TURN_TIME.standard()),
        units.typed(Unit.KNOT, TailRotorSector.AIRSPEED),
        Arrays.stream(TailRotorSector.values())
            .map(sector -> sector.label() + " " + sector.range(plan.craft().sense()))
            .collect(Collectors.joining(", ")),
        plan.craft().sense().label(),
        RunsMessages.SAY.heightVelocity(
            request.curve().stream()
                .map(
                    point ->
                        units.typed(Unit.KNOT, point.airspeed())
                            + " at "
                            + units.typed(Unit.FOOT, point.height()))
                .collect(Collectors.joining(", "))));
  }
}
