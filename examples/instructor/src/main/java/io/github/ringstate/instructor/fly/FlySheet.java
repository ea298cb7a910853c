package io.github.ringstate.instructor.fly;

import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.report.Caution;
import io.github.ringstate.instructor.report.Cell;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Sheet;
import io.github.ringstate.instructor.report.Sheet.GridColumn;
import io.github.ringstate.instructor.report.Table;
import io.github.ringstate.instructor.report.Term;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** A flight laid out for people: what was flown, what came of it, the events, the samples. */
final class FlySheet {

  private FlySheet() {}

  static Sheet of(FlyReport report) {
    return new Sheet(
        List.of(
            new Sheet.Title("Vortex ring state: one flight"),
            new Sheet.Terms(heading(report)),
            new Sheet.Heading("Events"),
            grid(
                report.events(),
                List.of(
                    GridColumn.left("event"),
                    GridColumn.right("time", "s"),
                    GridColumn.right("height", "ft"),
                    GridColumn.right("vert.speed", "ft/min"))),
            new Sheet.Heading("Time history"),
            grid(
                report.table(),
                List.of(
                    GridColumn.right("time", "s"),
                    GridColumn.right("height", "ft"),
                    GridColumn.right("ground", "kt"),
                    GridColumn.right("air", "kt"),
                    GridColumn.right("vert.", "ft/min"),
                    GridColumn.right("pitch", "deg"),
                    GridColumn.right("bank", "deg"),
                    GridColumn.right("coll.", "deg"),
                    GridColumn.right("rotor", "%"),
                    GridColumn.right("power", "%"),
                    GridColumn.right("ind.", "1"),
                    GridColumn.right("axial", "1"),
                    GridColumn.right("edge", "1"),
                    GridColumn.left("phase"))),
            new Sheet.Terms(report.terms()),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  private static List<Term> heading(FlyReport report) {
    FlyRequest request = report.request();
    Approach approach = request.approach();
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term(
            "Craft",
            request.conditions().craft().name()
                + ": "
                + request.conditions().craft().description()));
    terms.add(new Term("Entry", approach.kind().label() + ": " + approach.kind().description()));
    terms.add(new Term("Wind", approach.wind()));
    terms.addAll(request.conditions().terms());
    terms.add(
        new Term(
            "Recovery",
            request.recovery().label()
                + ", begun "
                + Decimals.brief(request.delayS())
                + " s after onset: "
                + request.recovery().description(request.conditions().craft().sense())));
    terms.add(new Term("Outcome", outcome(report.flown().outcome())));
    return terms;
  }

  private static String outcome(Outcome outcome) {
    return switch (outcome.ending()) {
      case ARRESTED ->
          "arrested "
              + Decimals.fixed(outcome.timeToArrest().getAsDouble(), 1)
              + " s after onset, having lost "
              + Decimals.fixed(Unit.FOOT.fromSi(outcome.altitudeLoss().getAsDouble()), 0)
              + " ft; "
              + peak(outcome);
      case GROUND ->
          "the craft reaches the ground at "
              + Decimals.fixed(Unit.FOOT_PER_MINUTE.fromSi(outcome.impactSpeed().getAsDouble()), 0)
              + " ft/min; "
              + peak(outcome);
      case NOT_ARRESTED -> "the descent was not arrested; " + peak(outcome);
      case NO_ONSET -> "the flight did not enter the ring state";
    };
  }

  private static String peak(Outcome outcome) {
    return "greatest rate of descent "
        + Decimals.fixed(Unit.FOOT_PER_MINUTE.fromSi(outcome.peakDescent().getAsDouble()), 0)
        + " ft/min";
  }

  private static Sheet.Grid grid(Table<?> table, List<GridColumn> columns) {
    return new Sheet.Grid(
        columns, table.records().map(row -> row.stream().map(Cell::text).toList()).toList());
  }
}
