package io.github.ringstate.instructor.floor;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.instructor.report.Caution;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Feet;
import io.github.ringstate.instructor.report.Sheet;
import io.github.ringstate.instructor.report.Sheet.GridColumn;
import io.github.ringstate.instructor.report.Term;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.study.Quantile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Floors laid out for people. */
final class FloorSheet {

  private FloorSheet() {}

  static Sheet of(FloorReport report) {
    FloorRequest request = report.request();
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Vortex ring state: height from which simulated pilots recovered"));
    List<Term> heading = heading(request);
    boolean single = report.blocks().size() == 1;
    if (!single) {
      blocks.add(new Sheet.Terms(heading));
    }
    for (FloorBlock block : report.blocks()) {
      List<Term> terms = new ArrayList<>(single ? heading : List.of());
      terms.addAll(block.conditions().terms());
      blocks.add(new Sheet.Terms(terms));
      blocks.add(grid(block, request));
      blocks.add(new Sheet.Paragraph(FloorTakeAway.of(block, request)));
      if (request.briefedFt().isPresent() && block.met()) {
        double heightFt = request.briefedFt().getAsDouble();
        blocks.add(new Sheet.Heading("Briefing for " + Decimals.brief(heightFt) + " ft at onset"));
        blocks.add(new Sheet.Terms(briefings(block, request, heightFt)));
        blocks.add(latest(block));
      }
    }
    blocks.add(new Sheet.Terms(FloorTerms.forPeople(request)));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private static List<Term> heading(FloorRequest request) {
    Helicopter craft = request.loaded().get(0);
    Approach approach = request.approach();
    List<Term> terms = new ArrayList<>();
    terms.add(new Term("Craft", craft.name() + ": " + craft.description()));
    terms.add(new Term("Entry", approach.kind().label() + ": " + approach.kind().description()));
    terms.add(new Term("Wind", approach.wind()));
    terms.add(new Term("Clock", request.clock().description(approach.entry(), craft)));
    if (request.disturbances().any()) {
      terms.add(new Term("Disturbance", PilotTerms.disturbances(request.disturbances())));
    }
    terms.add(PilotTerms.pilots(request.pool(), request.disturbances(), true));
    return terms;
  }

  private static Sheet.Grid grid(FloorBlock block, FloorRequest request) {
    boolean models = request.pool().models().isPresent();
    List<GridColumn> columns = new ArrayList<>();
    columns.add(GridColumn.left("state"));
    columns.add(GridColumn.left("recovery"));
    columns.add(GridColumn.right("50 %", "loss, ft"));
    columns.add(GridColumn.right(FloorTakeAway.percent(request.share()), "loss, ft"));
    columns.add(GridColumn.right("floor", "ft"));
    columns.add(GridColumn.right("floor lies in", "ft"));
    if (models) {
      columns.add(GridColumn.right("and model", "ft"));
    }
    columns.add(GridColumn.right("arrested", "share"));
    List<List<String>> lines = new ArrayList<>();
    for (PilotState state : request.states()) {
      String label = state.label();
      for (FloorRow row : block.rows(state)) {
        lines.add(line(label, row, models));
        label = "";
      }
    }
    return new Sheet.Grid(columns, lines);
  }

  private static List<String> line(String state, FloorRow row, boolean models) {
    List<String> texts = new ArrayList<>();
    texts.add(state);
    texts.add(row.recovery().label());
    texts.add(loss(row.losses(), 0.5));
    texts.add(loss(row.losses(), row.share()));
    texts.add(
        row.floorFt()
            .map(Quantile::value)
            .map(feet -> Double.isInfinite(feet) ? "none" : Decimals.fixed(Feet.up(feet), 0))
            .orElse(""));
    texts.add(PilotCells.band(row.floorFt(), Feet::down, Feet::up));
    if (models) {
      texts.add(PilotCells.band(row.widestFloorFt(), Feet::down, Feet::up));
    }
    texts.add(PilotCells.arrested(row.losses()));
    return texts;
  }

  private static String loss(PilotLosses losses, double share) {
    Optional<Quantile> loss = losses.lossFt(share);
    if (loss.isEmpty()) {
      return "no ring state";
    }
    double feet = loss.get().value();
    return Double.isInfinite(feet) ? "not arrested" : Feet.text(feet);
  }

  private static List<Term> briefings(FloorBlock block, FloorRequest request, double heightFt) {
    return request.states().stream()
        .map(
            state -> new Term(state.label(), HeightBriefing.of(heightFt, block.rows(state)).text()))
        .toList();
  }

  private static Sheet.Grid latest(FloorBlock block) {
    return new Sheet.Grid(
        List.of(GridColumn.left("recovery"), GridColumn.right("latest moment", "s")),
        block.latest().stream()
            .map(latest -> List.of(latest.recovery().label(), moment(latest)))
            .toList());
  }

  private static String moment(LatestMoment latest) {
    if (latest.delayS().isEmpty()) {
      return "none";
    }
    double delay = latest.delayS().getAsDouble();
    return Decimals.fixed(delay, 2) + (delay == FloorTerms.LATEST ? " or more" : "");
  }
}
