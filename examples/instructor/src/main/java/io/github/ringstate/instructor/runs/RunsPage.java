package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.PrintedGrid;
import io.github.ringstate.study.run.RunVerdict;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A run as a sheet: the tracks, and what the crew agrees and signs. On the back, if two conditions
 * are compared, the tracks of the other.
 */
final class RunsPage {

  private static final String DASH = "–";

  private final RunsRequest request;
  private final RunAnalysis analysis;
  private final UnitSystem units;
  private final Optional<Sheet.Grid> compared;
  private final Optional<RunsReport> worse;

  private RunsPage(RunsReport report, UnitSystem units) {
    request = report.request();
    analysis = report.analysis();
    this.units = units;
    compared = RunsCompared.of(report, units);
    worse = report.worse();
  }

  /** One line of the table. */
  record Line(TrackNumbers numbers, boolean isNo, boolean isLimit) {}

  /** The tracks in one condition, and why each verdict. */
  record Tracks(List<Line> lines, List<Why> why) {}

  static Page of(RunsReport report, PageSettings settings) {
    return new RunsPage(report, settings.units()).page();
  }

  private Page page() {
    RunPolar polar = new RunPolar(request, analysis, units);
    RunsFacts facts = RunsFacts.of(request, analysis, units);
    Map<String, Object> model = new HashMap<>();
    model.put("situation", RunsMessages.SAY.sheetSituation(facts));
    model.put("wind", RunsMessages.SAY.sheetWind(facts));
    Tracks tracks = tracks();
    model.put("lines", tracks.lines());
    model.put("why", tracks.why());
    model.put("worse", worse.map(then -> new RunsPage(then, units).tracks()).stream().toList());
    model.put("isLong", worse.isPresent());
    model.put("compared", compared.map(PrintedGrid::of).stream().toList());
    model.put("speedUnit", units.speed().symbol());
    model.put("sinkUnit", units.verticalSpeed().symbol());
    model.put("checks", RunsMessages.SAY.checks(facts, CrewFacts.of(request, analysis, units)));
    model.put(
        "limits",
        RunsMessages.SAY.limits(
            facts,
            analysis.rows().stream()
                .noneMatch(row -> row.verdict().compareTo(RunVerdict.FLY_WITH_A_LIMIT) <= 0)));
    model.put("tailRotor", RunsMessages.SAY.tailRotor(facts));
    model.put("heightVelocity", Words.capital(RunsMessages.SAY.heightVelocity(facts)));
    model.put("wayOut", Words.capital(RunsMessages.SAY.wayOut(facts)));
    model.put("terms", RunsMessages.SAY.sheetDefinitions(facts));
    model.put("pilots", request.pool().pilots());
    model.put("seed", request.pool().seed());
    model.put("parameters", ModelNote.of(request.conditions().craft()));
    return new Page(
        RunsPage.class,
        "runs.mustache",
        "Slow runs: what each track takes",
        true,
        model,
        Map.of("polar", polar.plot(), "legend", polar.legend()));
  }

  private Tracks tracks() {
    return new Tracks(
        TrackPair.of(analysis.rows()).stream().map(this::line).toList(),
        Why.of(request, analysis, units));
  }

  private Line line(TrackPair pair) {
    RunVerdict verdict = pair.first().verdict();
    return new Line(
        TrackNumbers.of(request, analysis, pair, units, DASH),
        verdict.compareTo(RunVerdict.NOT_AS_PLANNED) >= 0,
        verdict == RunVerdict.FLY_WITH_A_LIMIT);
  }
}
