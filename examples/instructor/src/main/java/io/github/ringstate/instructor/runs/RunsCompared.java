package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.study.run.RunLoss;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A run as planned, and heavier, hotter, later: side by side. */
final class RunsCompared {

  private RunsCompared() {}

  /**
   * What differs.
   *
   * @param planned the run as planned
   * @param units the units to speak in
   * @return a line for each figure, then for each track of which the verdict differs; empty unless
   *     two are compared
   */
  static Optional<Sheet.Grid> of(RunsReport planned, UnitSystem units) {
    return planned.worse().map(then -> grid(planned, then, units));
  }

  private static Sheet.Grid grid(RunsReport planned, RunsReport then, UnitSystem units) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            "mass and air",
            planned.request().conditions().loadAndAir(units),
            then.request().conditions().loadAndAir(units)));
    lines.add(
        List.of(
            "hover",
            planned.request().conditions().hoverInWords(),
            then.request().conditions().hoverInWords()));
    lines.add(
        List.of(
            "technique",
            planned.analysis().technique().label(),
            then.analysis().technique().label()));
    lines.add(List.of("minimum airspeed", minimum(planned, units), minimum(then, units)));
    lines.add(List.of("loss, worst track", loss(planned, units), loss(then, units)));
    List<TrackPair> before = TrackPair.of(planned.analysis().rows());
    List<TrackPair> after = TrackPair.of(then.analysis().rows());
    boolean alike = true;
    for (int i = 0; i < before.size(); i++) {
      TrackNumbers first = numbers(planned, before.get(i), units);
      TrackNumbers second = numbers(then, after.get(i), units);
      if (!first.verdict().equals(second.verdict())) {
        lines.add(List.of("track " + first.tracks(), first.verdict(), second.verdict()));
        alike = false;
      }
    }
    if (alike) {
      lines.add(List.of("verdicts", "as in the table", "the same on every track"));
    }
    return new Sheet.Grid(
        List.of(
            GridColumn.left(""),
            GridColumn.left("as planned"),
            GridColumn.left("heavier, hotter, later")),
        lines);
  }

  private static TrackNumbers numbers(RunsReport report, TrackPair pair, UnitSystem units) {
    return TrackNumbers.of(report.request(), report.analysis(), pair, units, "-");
  }

  private static String minimum(RunsReport report, UnitSystem units) {
    return report
        .analysis()
        .limits()
        .map(limits -> units.speedInWords(limits.minimum()))
        .orElse("none");
  }

  private static String loss(RunsReport report, UnitSystem units) {
    return report
        .analysis()
        .worst()
        .map(RunLoss::most)
        .map(most -> Double.isInfinite(most) ? "open" : units.lossInWords(most))
        .orElse("ring state not met");
  }
}
