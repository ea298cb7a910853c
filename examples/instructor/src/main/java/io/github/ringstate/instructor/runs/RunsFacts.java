package io.github.ringstate.instructor.runs;

import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.conditions.CraftWords;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.Finding;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunLimits;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunPlan;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A run as its messages speak of it: numbers with their units, and conditions. */
record RunsFacts(
    String craft,
    String loading,
    String densityAltitude,
    String hoverMargin,
    String continuousHoverMargin,
    boolean shortOfPower,
    String groundSpeed,
    String height,
    String descent,
    String margin,
    String lowest,
    boolean windy,
    String reported,
    boolean gustAssumed,
    String tenMetres,
    String wind,
    String gust,
    String exponent,
    String aloft,
    String aloftFrom,
    String allowance,
    String downwind,
    String downwindGround,
    boolean lowInATurn,
    boolean met,
    String loss,
    String lossBand,
    String needed,
    boolean covered,
    String best,
    String worst,
    String minimum,
    boolean byRing,
    boolean byCurve,
    boolean byPower,
    String sinkToRefuse,
    String technique,
    String techniqueWords,
    String pilots,
    String reached,
    String turbulence,
    String way,
    String drift,
    String pedals,
    String obstacles,
    String median,
    String ninety,
    String turnTime,
    String sectorAirspeed,
    String sectors,
    String rotation,
    String curvePoints,
    String curveAirspeed) {

  /**
   * The rate of descent from which handbooks warn of the ring state (FAA-H-8083-21B, 2019, quoted).
   */
  private static final double SINK_TO_REFUSE = Unit.FOOT_PER_MINUTE.toSi(300);

  private static final double REPORTED_AT = 10;

  static RunsFacts of(RunsRequest request, RunAnalysis analysis, UnitSystem units) {
    Conditions conditions = request.conditions();
    RunPlan plan = request.plan();
    RunJudgement judgement = analysis.anywhere();
    Directions directions = new Directions(analysis);
    Optional<RunLimits.Bound> bound = analysis.limits().map(RunLimits::bound);
    return new RunsFacts(
        CraftWords.of(conditions.craft()),
        conditions.loadAndAir(units),
        units.lengthInWords(conditions.air().densityAltitude()),
        RunRow.wholePercent(judgement.hover().margin(), ""),
        RunRow.wholePercent(judgement.hover().continuousMargin(), ""),
        conditions.hover().isShort(),
        units.typed(Unit.KNOT, plan.groundSpeed()),
        units.typed(Unit.FOOT, plan.height()),
        units.typed(Unit.FOOT_PER_MINUTE, plan.descent()),
        units.typed(Unit.FOOT, plan.margin()),
        units.typed(Unit.FOOT, plan.lowestHeight()),
        !plan.wind().isCalm(),
        request.reported().inWords(units),
        request.reported().gustAssumed(),
        units.lengthInWords(REPORTED_AT),
        units.speedInWords(plan.wind().speed()),
        units.speedInWords(plan.wind().gust()),
        Decimals.brief(request.reported().exponent()),
        request.reported().aloft().inWords(units),
        Headings.windFrom(plan.wind().from()),
        units.typed(Unit.KNOT, plan.wind().allowance()),
        units.speedInWords(judgement.turn().airspeed()),
        judgement.turn().finding() != Finding.HOLDS && judgement.turn().groundSpeed().isPresent()
            ? units.speedInWords(judgement.turn().groundSpeed().getAsDouble())
            : "",
        judgement.turn().finding() != Finding.HOLDS,
        analysis.worst().isPresent(),
        analysis.worst().isEmpty() || analysis.isOpen()
            ? ""
            : units.lossInWords(analysis.worst().get().most()),
        analysis.worst().map(loss -> band(loss, units)).orElse(""),
        analysis.neededForLoss(request, units),
        analysis.worst().filter(loss -> plan.covers(loss.most())).isPresent(),
        directions.best(),
        directions.worst(),
        analysis.limits().map(limits -> units.speedInWords(limits.minimum())).orElse(""),
        bound.filter(by -> by == RunLimits.Bound.RING_STATE).isPresent(),
        bound.filter(by -> by == RunLimits.Bound.HEIGHT_VELOCITY).isPresent(),
        bound.filter(by -> by == RunLimits.Bound.POWER).isPresent(),
        units.verticalSpeedInWords(Math.max(plan.descent(), SINK_TO_REFUSE)),
        analysis.technique().name(),
        analysis.technique().description(plan.craft().sense()),
        request.pool().isPrecise()
            ? "at most " + request.pool().pilots()
            : Integer.toString(request.pool().pilots()),
        analysis.worst().isPresent()
            ? PilotTerms.reached(
                request.pool(), List.of(analysis.worst().get().quantile(RunAnalysis.SHARE)), units)
            : "",
        request.disturbances().any() ? PilotTerms.disturbances(request.disturbances(), units) : "",
        analysis.way().map(way -> way.inWords(units)).orElse(""),
        analysis
            .way()
            .filter(way -> !plan.wind().isCalm())
            .map(way -> units.lossInWords(plan.wind().speed() * way.seconds()))
            .orElse(""),
        analysis.technique().equals(Technique.LATERAL) ? PilotTerms.pedals() : "",
        PilotTerms.obstacles(),
        Decimals.brief(PilotState.DISTRACTED.median()),
        Decimals.brief(PilotState.DISTRACTED.ninetyPercent()),
        Decimals.brief(Downwind.TURN_TIME.standard()),
        units.typed(Unit.KNOT, TailRotorSector.AIRSPEED),
        Arrays.stream(TailRotorSector.values())
            .map(sector -> sector.label() + " " + sector.range(plan.craft().sense()))
            .collect(Collectors.joining(", ")),
        plan.craft().sense().label(),
        plan.curve().points().stream()
            .map(
                point ->
                    units.typed(Unit.KNOT, point.airspeed())
                        + " at "
                        + units.typed(Unit.FOOT, point.height()))
            .collect(Collectors.joining(", ")),
        plan.minimumByCurve().isPresent()
            ? units.speedInWords(plan.minimumByCurve().getAsDouble())
            : "");
  }

  /** The interval of the loss; empty without two ends. */
  private static String band(RunLoss loss, UnitSystem units) {
    return Double.isFinite(loss.mostLow()) && Double.isFinite(loss.mostHigh())
        ? units.loss(loss.mostLow()) + " to " + units.lossInWords(loss.mostHigh())
        : "";
  }
}
