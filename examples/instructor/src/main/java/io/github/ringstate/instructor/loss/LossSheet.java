package io.github.ringstate.instructor.loss;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.report.TextColumn;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;

/** A loss table laid out for people. */
record LossSheet(LossRequest request, UnitSystem units) {

  Sheet sheet(LossReport report) {
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Vortex ring state: altitude loss against delay"));
    List<Term> heading = heading();
    boolean single = report.result().blocks().size() == 1;
    if (!single) {
      blocks.add(new Sheet.Terms(heading));
    }
    boolean second = false;
    for (LossBlock block : report.result().blocks()) {
      boolean worse = second;
      request
          .compared()
          .ifPresent(by -> blocks.add(new Sheet.Heading(PilotTerms.compared(worse, by.later()))));
      second = true;
      List<Term> terms = new ArrayList<>(single ? heading : List.of());
      terms.addAll(block.conditions().terms(units));
      blocks.add(new Sheet.Terms(terms));
      blocks.add(block.pilots().isEmpty() ? grid(block) : PilotGrid.of(block, request, units));
      blocks.add(new Sheet.Paragraph(block.inShort(units)));
    }
    if (request.recoveries().stream().anyMatch(Technique::isMistaken)) {
      blocks.add(new Sheet.Paragraph(NotAWayOut.TEXT));
    }
    List<Term> definitions = new ArrayList<>(report.reached(units));
    definitions.addAll(
        LossMessages.SAY.definitions(LossFacts.of(request, units, report.result().anySensitive())));
    blocks.add(new Sheet.Terms(definitions));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private List<Term> heading() {
    List<Term> terms = new ArrayList<>(request.situation(units).terms());
    terms.addAll(LossMessages.SAY.heading(LossFacts.of(request, units, false)));
    return terms;
  }

  private Sheet.Grid grid(LossBlock block) {
    String loss = "loss, " + units.length().symbol();
    List<TextColumn<Double>> columns = new ArrayList<>();
    columns.add(TextColumn.right(Decimals::given, "delay", "s"));
    for (Technique recovery : block.recoveries()) {
      List<String> head = new ArrayList<>(List.of(recovery.label(), loss));
      if (recovery.isMistaken()) {
        head.add(NotAWayOut.HEAD);
      }
      columns.add(
          new TextColumn<>(
              new GridColumn(head, false), delay -> cell(block.row(recovery, delay), units)));
    }
    return TextColumn.grid(columns, block.delays());
  }

  /**
   * One flight in one cell.
   *
   * @param row the flight
   * @param units the units to speak in
   * @return a number or a few words, with a mark if they are sensitive
   */
  static String cell(LossRow row, UnitSystem units) {
    return outcome(row, units) + row.mark();
  }

  private static String outcome(LossRow row, UnitSystem units) {
    return switch (row.ending()) {
      case ARRESTED -> units.loss(row.loss());
      case GROUND -> "GROUND " + units.verticalSpeed(row.outcome().impactSpeed().getAsDouble());
      case NOT_ARRESTED -> row.fellThrough() ? "fell through" : "not arrested";
      case ARREST_NOT_LASTING -> "not for good";
      case STOPPED -> "stopped";
      case NO_ONSET -> "no ring state";
    };
  }
}
