package io.github.ringstate.instructor.loss;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.instructor.report.Caution;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Feet;
import io.github.ringstate.instructor.report.Sheet;
import io.github.ringstate.instructor.report.Sheet.GridColumn;
import io.github.ringstate.instructor.report.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A loss table laid out for people. */
final class LossSheet {

  private LossSheet() {}

  static Sheet of(LossReport report) {
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Vortex ring state: altitude loss against delay"));
    List<Term> heading = heading(report.request());
    boolean single = report.blocks().size() == 1;
    if (!single) {
      blocks.add(new Sheet.Terms(heading));
    }
    for (LossBlock block : report.blocks()) {
      List<Term> terms = new ArrayList<>(single ? heading : List.of());
      terms.addAll(block.conditions().terms());
      blocks.add(new Sheet.Terms(terms));
      blocks.add(block.pilots().isEmpty() ? grid(block) : PilotGrid.of(block, report.request()));
      blocks.add(new Sheet.Paragraph(block.inShort()));
    }
    blocks.add(new Sheet.Terms(LossTerms.forPeople(report.request())));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private static List<Term> heading(LossRequest request) {
    Helicopter craft = request.loaded().get(0);
    Approach approach = request.approach();
    OptionalDouble height = approach.heightFt();
    List<Term> terms = new ArrayList<>();
    terms.add(new Term("Craft", craft.name() + ": " + craft.description()));
    terms.add(new Term("Entry", approach.kind().label() + ": " + approach.kind().description()));
    terms.add(new Term("Wind", approach.wind()));
    terms.add(
        new Term(
            "Ground",
            height.isPresent()
                ? Decimals.brief(height.getAsDouble()) + " ft below the craft at onset"
                : "none within reach"));
    terms.add(new Term("Clock", request.clock().description(approach.entry(), craft)));
    if (request.disturbances().any()) {
      terms.add(new Term("Disturbance", PilotTerms.disturbances(request.disturbances())));
    }
    request
        .pool()
        .ifPresent(
            pool ->
                terms.add(
                    PilotTerms.pilots(pool, request.disturbances(), request.state().isPresent())));
    request.state().ifPresent(state -> terms.add(PilotTerms.state(state)));
    return terms;
  }

  private static Sheet.Grid grid(LossBlock block) {
    List<GridColumn> columns = new ArrayList<>();
    columns.add(GridColumn.right("delay", "s"));
    for (RecoveryKind recovery : block.recoveries()) {
      columns.add(GridColumn.right(recovery.label(), "loss, ft"));
    }
    List<List<String>> lines = new ArrayList<>();
    for (double delay : block.delays()) {
      List<String> line = new ArrayList<>();
      line.add(Decimals.given(delay));
      for (RecoveryKind recovery : block.recoveries()) {
        line.add(cell(block.row(recovery, delay)));
      }
      lines.add(line);
    }
    return new Sheet.Grid(columns, lines);
  }

  static String cell(LossRow row) {
    return switch (row.ending()) {
      case ARRESTED -> Feet.text(row.altitudeLossFt().getAsDouble());
      case GROUND ->
          "GROUND " + Decimals.fixed(10 * Math.rint(row.impactFpm().getAsDouble() / 10), 0);
      case NOT_ARRESTED -> "not arrested";
      case NO_ONSET -> "no ring state";
    };
  }
}
