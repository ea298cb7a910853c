package io.github.ringstate.instructor.runs;

import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.report.Caution;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Feet;
import io.github.ringstate.instructor.report.Sheet;
import io.github.ringstate.instructor.report.Sheet.GridColumn;
import io.github.ringstate.instructor.report.Term;
import io.github.ringstate.instructor.sheet.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.RunPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A run laid out for people. */
final class RunsSheet {

  private final RunsRequest request;
  private final RunAnalysis analysis;
  private final RunReason reason;

  private RunsSheet(RunsReport report) {
    request = report.request();
    analysis = report.analysis();
    reason = new RunReason(request, analysis, UnitSystem.AVIATION);
  }

  static Sheet of(RunsReport report) {
    return new RunsSheet(report).sheet();
  }

  private Sheet sheet() {
    return new Sheet(
        List.of(
            new Sheet.Title("Slow runs: what each track takes"),
            new Sheet.Terms(heading(request, analysis)),
            grid(),
            new Sheet.Heading("Why"),
            new Sheet.Terms(reasons()),
            new Sheet.Heading("Words"),
            new Sheet.Terms(RunsTerms.forPeople(request)),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  /** What is flown, in which conditions, and what comes of it in short. */
  static List<Term> heading(RunsRequest request, RunAnalysis analysis) {
    Conditions conditions = request.conditions();
    RunPlan plan = request.plan();
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term("Craft", conditions.craft().name() + ": " + conditions.craft().description()));
    terms.addAll(conditions.terms());
    terms.add(
        new Term(
            "Run",
            Decimals.brief(Unit.KNOT.fromSi(plan.groundSpeed()))
                + " kt over the ground, "
                + Decimals.brief(Unit.FOOT.fromSi(plan.height()))
                + " ft above it, descending at "
                + Decimals.brief(Unit.FOOT_PER_MINUTE.fromSi(plan.descent()))
                + " ft/min"));
    terms.add(
        new Term(
            "Wind",
            request.reported().inWords()
                + " at 33 ft; at the height flown "
                + Decimals.fixed(Unit.KNOT.fromSi(plan.windSpeed()), 0)
                + " kt, gusts "
                + Decimals.fixed(Unit.KNOT.fromSi(plan.gust()), 0)
                + " kt (power law, exponent "
                + Decimals.brief(request.reported().exponent())
                + ")"));
    terms.add(new Term("Best", new Directions(analysis).best()));
    terms.add(new Term("Worst", new Directions(analysis).worst()));
    return terms;
  }

  private Sheet.Grid grid() {
    List<GridColumn> columns =
        List.of(
            GridColumn.right("track", "deg"),
            GridColumn.right("tail", "kt"),
            GridColumn.right("cross", "kt"),
            GridColumn.right("air", "kt"),
            GridColumn.right("gusts", "kt"),
            GridColumn.right("power", "%"),
            GridColumn.right("to ring", "ft/min"),
            GridColumn.right("loss", "ft"),
            GridColumn.left("escape", "deg"),
            GridColumn.left("tail", "rotor"),
            GridColumn.left("verdict"));
    return new Sheet.Grid(
        columns, analysis.rows().stream().map(row -> line(request, row)).toList());
  }

  private static List<String> line(RunsRequest request, RunRow row) {
    return List.of(
        EscapeWords.threeDigits(row.trackDeg()),
        Decimals.fixed(row.tailwindKt(), 0),
        Decimals.fixed(row.crosswindKt(), 0),
        Decimals.fixed(row.airspeedKt(), 0),
        Decimals.fixed(row.leastAirspeedKt(), 0),
        whole(row.continuousMarginPct()),
        tens(row.boundaryMarginFpm()),
        loss(row),
        EscapeWords.brief(request, row),
        "none".equals(EscapeWords.sectors(request, row)) ? "" : "*",
        row.judgement().verdict().label());
  }

  static String loss(RunRow row) {
    if (row.isNotArrested()) {
      return "OPEN";
    }
    return row.lossFt().isPresent() ? Feet.text(row.lossFt().getAsDouble()) : "-";
  }

  private static String whole(OptionalDouble value) {
    return value.isPresent() ? Decimals.fixed(value.getAsDouble(), 0) : "-";
  }

  private static String tens(OptionalDouble value) {
    return value.isPresent() ? Decimals.fixed(10 * Math.rint(value.getAsDouble() / 10), 0) : "-";
  }

  private List<Term> reasons() {
    return analysis.rows().stream()
        .map(
            row ->
                new Term(
                    EscapeWords.threeDigits(row.trackDeg())
                        + " "
                        + row.judgement().verdict().label(),
                    reason.sentence(row)))
        .toList();
  }
}
