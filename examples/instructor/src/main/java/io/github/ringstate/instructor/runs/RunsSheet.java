package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.unit.UnitSystem;
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
    RunsFacts facts = RunsFacts.of(request, analysis, units);
    return new Sheet(
        List.of(
            new Sheet.Title("Slow runs: what each track takes"),
            new Sheet.Terms(heading(facts)),
            grid(),
            new Sheet.Heading("Why"),
            new Sheet.Terms(reasons()),
            new Sheet.Heading("Definitions"),
            new Sheet.Terms(RunsMessages.SAY.definitions(facts)),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  /** What is flown, in which conditions, and what comes of it in short. */
  private List<Term> heading(RunsFacts facts) {
    List<Term> terms = new ArrayList<>();
    terms.add(new Term("Craft", facts.craft()));
    terms.addAll(request.conditions().terms(units));
    terms.addAll(RunsMessages.SAY.situation(facts));
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
            GridColumn.right("power", "margin", "% cont."),
            GridColumn.right("power", "margin", "% t/o"),
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
    return row.altitudeLoss().isPresent()
        ? (row.isOver(request.plan()) ? ">" : "") + units.loss(row.altitudeLoss().getAsDouble())
        : DASH;
  }

  private List<Term> reasons() {
    return Why.of(request, analysis, units).stream()
        .map(why -> new Term(why.verdict(), "on " + why.tracks() + ". " + why.sentence()))
        .toList();
  }
}
