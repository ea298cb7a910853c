package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Floors laid out for people. */
final class FloorSheet {

  private final FloorRequest request;
  private final UnitSystem units;

  private FloorSheet(FloorRequest request, UnitSystem units) {
    this.request = request;
    this.units = units;
  }

  static Sheet of(FloorReport report, UnitSystem units) {
    return new FloorSheet(report.request(), units).sheet(report);
  }

  private Sheet sheet(FloorReport report) {
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Vortex ring state: height from which simulated pilots recovered"));
    List<Term> heading = heading();
    boolean single = report.blocks().size() == 1;
    if (!single) {
      blocks.add(new Sheet.Terms(heading));
    }
    for (FloorBlock block : report.blocks()) {
      List<Term> terms = new ArrayList<>(single ? heading : List.of());
      terms.addAll(block.conditions().terms(units));
      blocks.add(new Sheet.Terms(terms));
      blocks.add(grid(block));
      blocks.add(new Sheet.Paragraph(FloorTakeAway.of(block, request, units)));
      if (request.briefed().isPresent() && block.met()) {
        double height = request.briefed().getAsDouble();
        blocks.add(
            new Sheet.Heading(FloorMessages.SAY.briefingFor(units.typed(Unit.FOOT, height))));
        blocks.add(new Sheet.Terms(briefings(block, height)));
        blocks.add(latest(block));
      }
    }
    if (request.recoveries().stream().anyMatch(Technique::isMistaken)) {
      blocks.add(new Sheet.Paragraph(NotAWayOut.TEXT));
    }
    blocks.add(new Sheet.Terms(List.of(new Term("floor known to", reached(report)))));
    blocks.add(
        new Sheet.Terms(
            FloorMessages.SAY.definitions(
                FloorFacts.of(request, units),
                request.states().stream().map(PilotTerms::state).toList())));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private String reached(FloorReport report) {
    return PilotTerms.reached(
        request.pool(),
        report.blocks().stream()
            .flatMap(block -> block.rows().stream())
            .flatMap(row -> row.floor().stream())
            .toList(),
        units);
  }

  private List<Term> heading() {
    List<Term> terms =
        new ArrayList<>(
            Situation.of(
                    request.loaded().get(0),
                    request.approach(),
                    request.clock(),
                    request.disturbances(),
                    units)
                .withoutGround()
                .terms());
    terms.add(new Term("pilots", PilotTerms.pilots(request.pool(), request.disturbances(), true)));
    return terms;
  }

  private Sheet.Grid grid(FloorBlock block) {
    String height = units.length().symbol();
    boolean models = request.pool().models().isPresent();
    List<GridColumn> columns = new ArrayList<>();
    columns.add(GridColumn.left("state"));
    columns.add(GridColumn.left("recovery"));
    columns.add(GridColumn.right("50 %", "loss, " + height));
    columns.add(GridColumn.right(FloorFacts.percent(request.share()), "loss, " + height));
    columns.add(GridColumn.right("floor", height));
    columns.add(GridColumn.right("95 % conf.", "interval, " + height));
    if (models) {
      columns.add(GridColumn.right("and model", height));
    }
    columns.add(GridColumn.right("arrested", "share"));
    List<List<String>> lines = new ArrayList<>();
    for (PilotState state : request.states()) {
      String label = state.label();
      boolean marked = false;
      for (FloorRow row : block.rows(state)) {
        if (!marked && !row.recovery().wayOut()) {
          lines.add(Sheet.Grid.heading(1, NotAWayOut.HEAD, columns.size()));
          marked = true;
        }
        lines.add(line(label, row, models));
        label = "";
      }
    }
    return new Sheet.Grid(columns, lines);
  }

  private List<String> line(String state, FloorRow row, boolean models) {
    List<String> texts = new ArrayList<>();
    texts.add(state);
    texts.add(row.recovery().label());
    texts.add(PilotCells.loss(row.losses(), 0.5, units));
    texts.add(PilotCells.loss(row.losses(), row.share(), units));
    texts.add(
        row.floor()
            .map(
                floor ->
                    Double.isInfinite(floor.value()) ? "none" : PilotCells.needed(floor, units))
            .orElse(""));
    texts.add(PilotCells.band(row.floor(), units::down, units::up));
    if (models) {
      texts.add(PilotCells.band(row.widestFloor(), units::down, units::up));
    }
    texts.add(PilotCells.arrested(row.losses()));
    return texts;
  }

  private List<Term> briefings(FloorBlock block, double height) {
    return request.states().stream()
        .map(state -> new Term(state.label(), HeightBriefing.of(height, block.rows(state)).text()))
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
      return FloorMessages.SAY.notEvenAtOnce();
    }
    double delay = latest.delayS().getAsDouble();
    String seconds = Decimals.fixed(delay, 2);
    return delay == FloorFacts.LATEST ? FloorMessages.SAY.orMore(seconds) : seconds;
  }
}
