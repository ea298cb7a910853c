package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.run.RunVerdict;
import java.util.ArrayList;
import java.util.List;

/**
 * What an instructor would take from a table of tracks, in two sentences: on how many tracks which
 * verdict stands, and why the mildest of them. Neither calls a run safe.
 */
final class RunsTakeAway {

  private RunsTakeAway() {}

  /**
   * Puts a report into sentences.
   *
   * @param report the run
   * @param units the units to speak in
   * @return a paragraph for each condition, the planned one first
   */
  static List<String> of(RunsReport report, UnitSystem units) {
    if (report.worse().isEmpty()) {
      return List.of(inShort(report, units));
    }
    RunsReport then = report.worse().get();
    double later = then.request().later();
    return List.of(
        PilotTerms.compared(false, later) + " " + inShort(report, units),
        PilotTerms.compared(true, later) + " " + inShort(then, units));
  }

  private static String inShort(RunsReport report, UnitSystem units) {
    RunAnalysis analysis = report.analysis();
    Directions directions = new Directions(analysis);
    List<String> counts = new ArrayList<>();
    for (RunVerdict verdict : RunVerdict.values()) {
      long count = analysis.rows().stream().filter(row -> row.verdict() == verdict).count();
      if (count > 0) {
        counts.add(
            RunsMessages.SAY.counted(
                verdict.label(),
                Long.toString(count),
                directions.arcs(row -> row.verdict() == verdict)));
      }
    }
    // the mildest verdict comes first
    Why first = Why.of(report.request(), analysis, units).get(0);
    return RunsMessages.SAY.inShort(
        Integer.toString(analysis.rows().size()),
        counts.size() == 1 ? Words.capital(first.verdict()) : "",
        Words.and(counts),
        analysis.rows().stream()
            .noneMatch(row -> row.verdict().compareTo(RunVerdict.FLY_WITH_A_LIMIT) <= 0),
        first.sentence());
  }
}
