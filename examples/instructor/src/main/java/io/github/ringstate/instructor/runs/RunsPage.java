package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PrintedGrid;
import io.github.ringstate.study.run.RunVerdict;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A run as a sheet: the tracks, and what the crew agrees and signs. On the back, if two conditions
 * are compared, the tracks of the other.
 */
record RunsPage(RunsReport report, UnitSystem units) {

  private static final String DASH = "–";

  /** One line of the table. */
  record Line(TrackNumbers numbers, boolean isNo, boolean isLimit) {}

  /**
   * The tracks in one condition.
   *
   * @param lines the table
   * @param others why all verdicts but the mildest, of which the take-away tells; one at the most
   */
  record Tracks(List<Line> lines, List<Others> others) {}

  /** Why some tracks have their verdict. */
  record Others(List<Why> why) {}

  private RunsRequest request() {
    return report.request();
  }

  private RunAnalysis analysis() {
    return report.analysis();
  }

  Page page() {
    List<String> inShort = RunsTakeAway.of(report, units);
    RunPolar polar = new RunPolar(request(), analysis(), units);
    RunsFacts facts = RunsFacts.of(request(), analysis(), units);
    Map<String, Object> model = new HashMap<>();
    model.put("situation", RunsMessages.SAY.sheetSituation(facts));
    model.put("wind", RunsMessages.SAY.sheetWind(facts));
    model.put("inShort", inShort.get(0));
    Tracks tracks = tracks();
    model.put("lines", tracks.lines());
    model.put("others", tracks.others());
    model.put(
        "worse", report.worse().map(then -> new RunsPage(then, units).tracks()).stream().toList());
    model.put("inShortIfWorse", inShort.get(inShort.size() - 1));
    model.put("isLong", report.worse().isPresent());
    model.put("compared", RunsCompared.of(report, units).map(PrintedGrid::of).stream().toList());
    model.put("speedUnit", units.speed().symbol());
    model.put("sinkUnit", units.verticalSpeed().symbol());
    model.put("checks", RunsMessages.SAY.checks(facts, CrewFacts.of(request(), analysis(), units)));
    model.put(
        "limits",
        RunsMessages.SAY.limits(
            facts,
            analysis().rows().stream()
                .noneMatch(row -> row.verdict().compareTo(RunVerdict.FLY_WITH_A_LIMIT) <= 0)));
    model.put("tailRotor", RunsMessages.SAY.tailRotor(facts));
    model.put("heightVelocity", Words.capital(RunsMessages.SAY.heightVelocity(facts)));
    model.put("wayOut", Words.capital(RunsMessages.SAY.wayOut(facts)));
    model.put("terms", RunsMessages.SAY.sheetDefinitions(facts));
    model.put("pilots", request().pool().pilots());
    model.put("seed", request().pool().seed());
    model.put("parameters", ModelNote.of(request().conditions().craft()));
    return new Page(
        RunsPage.class,
        "runs.mustache",
        "Slow runs: what each track takes",
        true,
        model,
        Map.of("polar", polar.plot(), "legend", polar.legend()));
  }

  private Tracks tracks() {
    List<Why> why = Why.of(request(), analysis(), units);
    return new Tracks(
        TrackPair.of(analysis().rows()).stream().map(this::line).toList(),
        why.size() == 1 ? List.of() : List.of(new Others(why.subList(1, why.size()))));
  }

  private Line line(TrackPair pair) {
    RunVerdict verdict = pair.first().verdict();
    return new Line(
        TrackNumbers.of(request(), analysis(), pair, units, DASH),
        verdict.compareTo(RunVerdict.NOT_AS_PLANNED) >= 0,
        verdict == RunVerdict.FLY_WITH_A_LIMIT);
  }
}
