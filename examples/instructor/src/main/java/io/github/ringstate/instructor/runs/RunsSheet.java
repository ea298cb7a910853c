package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunPlan;
import java.util.ArrayList;
import java.util.List;

/** A run laid out for people. */
final class RunsSheet {

  private static final String DASH = "-";

  private final RunsRequest request;
  private final RunAnalysis analysis;

  private final UnitSystem units;

  private RunsSheet(RunsReport report, UnitSystem units) {
    request = report.request();
    analysis = report.analysis();
    this.units = units;
  }

  static Sheet of(RunsReport report, UnitSystem units) {
    return new RunsSheet(report, units).sheet();
  }

  private Sheet sheet() {
    return new Sheet(
        List.of(
            new Sheet.Title("Slow runs: what each track takes"),
            new Sheet.Terms(heading()),
            grid(),
            new Sheet.Heading("Why"),
            new Sheet.Terms(reasons()),
            new Sheet.Heading("Words"),
            new Sheet.Terms(RunsTerms.forPeople(request, units)),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  /** What is flown, in which conditions, and what comes of it in short. */
  private List<Term> heading() {
    Conditions conditions = request.conditions();
    RunPlan plan = request.plan();
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term("Craft", conditions.craft().name() + ": " + conditions.craft().description()));
    terms.addAll(conditions.terms(units));
    terms.add(
        new Term(
            "Run",
            units.given(Unit.KNOT, Unit.KNOT.fromSi(plan.groundSpeed()))
                + " over the ground, "
                + units.given(Unit.FOOT, Unit.FOOT.fromSi(plan.height()))
                + " above it, descending at "
                + units.given(Unit.FOOT_PER_MINUTE, Unit.FOOT_PER_MINUTE.fromSi(plan.descent()))));
    terms.add(
        new Term(
            "Wind",
            plan.gust() == 0
                ? "calm"
                : request.reported().inWords(units)
                    + " at "
                    + units.lengthInWords(10)
                    + "; at the height flown "
                    + units.speedInWords(plan.windSpeed())
                    + ", gusts "
                    + units.speedInWords(plan.gust())
                    + " (power law, exponent "
                    + Decimals.brief(request.reported().exponent())
                    + ")"));
    terms.add(new Term("Turn", RunsTerms.turn(analysis, units)));
    terms.add(new Term("Best", new Directions(analysis).best()));
    terms.add(new Term("Worst", new Directions(analysis).worst()));
    return terms;
  }

  private Sheet.Grid grid() {
    List<GridColumn> columns =
        List.of(
            GridColumn.right("track", "deg"),
            GridColumn.right("tail", units.speed().symbol()),
            GridColumn.right("cross", units.speed().symbol()),
            GridColumn.right("air", units.speed().symbol()),
            GridColumn.right("gusts", units.speed().symbol()),
            GridColumn.right("cont.", "power %"),
            GridColumn.right("short", "power %"),
            GridColumn.right("to ring", units.verticalSpeed().symbol()),
            GridColumn.right("loss", units.length().symbol()),
            GridColumn.left("escape", "deg"),
            GridColumn.left("tail", "rotor"),
            GridColumn.left("verdict"));
    return new Sheet.Grid(columns, analysis.rows().stream().map(this::line).toList());
  }

  private List<String> line(RunRow row) {
    List<String> texts = new ArrayList<>(TrackNumbers.of(row, units, DASH).inOrder());
    texts.add(loss(row));
    texts.add(EscapeWords.brief(row));
    texts.add(EscapeWords.mark(request, row));
    texts.add(row.judgement().verdict().label());
    return texts;
  }

  private String loss(RunRow row) {
    if (row.isNotArrested()) {
      return "OPEN";
    }
    return row.lossFt().isPresent()
        ? (row.isOver(request.plan()) ? ">" : "") + units.lost(row.lossFt().getAsDouble())
        : DASH;
  }

  private List<Term> reasons() {
    return Why.of(request, analysis, units).stream()
        .map(why -> new Term(why.verdict(), "on " + why.tracks() + ". " + why.sentence()))
        .toList();
  }
}
