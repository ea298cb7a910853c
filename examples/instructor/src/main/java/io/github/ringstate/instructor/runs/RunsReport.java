package io.github.ringstate.instructor.runs;

import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ConditionCells;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.pilots.Way;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Printable;
import io.github.ringstate.study.run.RunPlan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A run, track by track.
 *
 * @param request what was asked for
 * @param analysis what was found
 * @param worse the same heavier, hotter and later; empty unless two conditions are compared
 */
record RunsReport(RunsRequest request, RunAnalysis analysis, Optional<RunsReport> worse)
    implements Printable {

  @Override
  public String title() {
    return "slow runs by track";
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new RunsSheet(this, units).sheet();
  }

  @Override
  public Page page(PageSettings settings) {
    return new RunsPage(this, settings.units()).page();
  }

  @Override
  public Table<RunRow> table() {
    return new RunsColumns(request, analysis).tracks();
  }

  @Override
  public Map<String, Cell> facts() {
    Conditions conditions = request.conditions();
    ReportedWind wind = request.reported();
    Map<String, Cell> facts = ConditionCells.facts(conditions, true);
    facts.put("calm", Cell.text(request.plan().wind().isCalm() ? "calm" : "wind"));
    facts.put("wind_from_deg", wind.isCalm() ? Cell.NOTHING : Cell.given(Unit.DEGREE, wind.from()));
    facts.put("wind_kt", Cell.given(Unit.KNOT, wind.mean()));
    facts.put("gust_kt", Cell.given(Unit.KNOT, wind.gust()));
    facts.put("wind_exponent", Cell.number(wind.exponent(), 3));
    facts.put(
        "wind_aloft",
        wind.aloft().isGiven()
            ? Cell.text(wind.aloft().inWords(UnitSystem.AVIATION))
            : Cell.NOTHING);
    facts.put(
        "wind_at_height_from_deg",
        request.plan().wind().isCalm()
            ? Cell.NOTHING
            : Cell.in(Unit.DEGREE, request.plan().wind().from()));
    facts.put("wind_at_height_kt", Cell.in(Unit.KNOT, request.plan().wind().speed()));
    facts.put("gust_at_height_kt", Cell.in(Unit.KNOT, request.plan().wind().gust()));
    facts.put("planned_descent_fpm", Cell.given(Unit.FOOT_PER_MINUTE, request.plan().descent()));
    facts.put("allowance_kt", Cell.given(Unit.KNOT, request.plan().wind().allowance()));
    facts.put("lowest_height_ft", Cell.given(Unit.FOOT, request.plan().lowestHeight()));
    facts.put("height_velocity_airspeed_kt", Cell.in(Unit.KNOT, request.plan().minimumByCurve()));
    facts.put("margin_ft", Cell.given(Unit.FOOT, request.plan().margin()));
    facts.put("technique", Cell.text(analysis.technique().name()));
    facts.put("pilot_state", Cell.text(PilotState.DISTRACTED.label()));
    facts.put(
        "turbulence_kt", Cell.given(request.disturbances().numbers().get(Disturbances.GUST_WIND)));
    facts.put("pilots", Cell.number(request.pool().pilots(), 0));
    facts.put(
        "precision_ft",
        request.pool().isPrecise() ? Cell.in(Unit.FOOT, request.pool().precision()) : Cell.NOTHING);
    facts.put("seed", Cell.number((double) request.pool().seed(), 0));
    facts.put("way_ahead_ft", way(Way::ahead));
    facts.put("way_right_ft", way(Way::right));
    facts.put(
        "way_s", analysis.way().map(way -> Cell.number(way.seconds(), 1)).orElse(Cell.NOTHING));
    facts.put(
        "minimum_airspeed_kt",
        analysis.limits().map(limits -> Cell.in(Unit.KNOT, limits.minimum())).orElse(Cell.NOTHING));
    facts.put("best_direction", Cell.text(new Directions(analysis).best()));
    facts.put("worst_direction", Cell.text(new Directions(analysis).worst()));
    facts.put("in_short", Cell.text(String.join(" ", RunsTakeAway.of(this, UnitSystem.AVIATION))));
    return facts;
  }

  private Cell way(ToDoubleFunction<Way> part) {
    return analysis
        .way()
        .map(way -> Cell.in(Unit.FOOT, part.applyAsDouble(way)))
        .orElse(Cell.NOTHING);
  }

  @Override
  public List<Term> definitions() {
    return RunsMessages.SAY.dataDefinitions(RunsFacts.of(request, analysis, UnitSystem.AVIATION));
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    tables.put("tracks", tracks());
    worse.ifPresent(then -> tables.put("tracks_if_worse", then.tracks()));
    return tables;
  }

  private Table<RunRow> tracks() {
    return table().with(new RunsColumns(request, analysis).more());
  }

  @Override
  public Map<String, Cell> settings() {
    RunPlan plan = request.plan();
    return new ResolvedSettings()
        .craft(request.conditions().craft())
        .air(request.conditions().air())
        .inflow(request.conditions().craft().inflow())
        .encounters(request.flown())
        .value("pilot.state", Cell.text(PilotState.DISTRACTED.label()))
        .value("pilot.count", Cell.number(request.pool().pilots(), 0))
        .value("run.ground_speed_m_per_s", Cell.exact(plan.groundSpeed()))
        .value("run.descent_m_per_s", Cell.exact(plan.descent()))
        .value("run.height_m", Cell.exact(plan.height()))
        .value("run.lowest_height_m", Cell.exact(plan.lowestHeight()))
        .value("run.margin_m", Cell.exact(plan.margin()))
        .value("run.wind_from_rad", Cell.exact(plan.wind().from()))
        .value("run.wind_m_per_s", Cell.exact(plan.wind().speed()))
        .value("run.gust_m_per_s", Cell.exact(plan.wind().gust()))
        .value("run.allowance_m_per_s", Cell.exact(plan.wind().allowance()))
        .value("run.boundary_margin_m_per_s", Cell.exact(request.boundaryMargin()))
        .value("run.minimum_airspeed_m_per_s", Cell.exact(request.minimumAirspeed()))
        .cells();
  }
}
