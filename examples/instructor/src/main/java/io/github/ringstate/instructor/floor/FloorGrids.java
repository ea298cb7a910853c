package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.pilot.PilotState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tables of floors, the same in text and on sheets. */
record FloorGrids(FloorRequest request, UnitSystem units) {

  /**
   * The floors.
   *
   * @param block at one mass in one air
   * @return a line for each state and recovery
   */
  Sheet.Grid floors(FloorBlock block) {
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
    if (!models) {
      // both would be wider than a line of text
      columns.add(GridColumn.right("one pilot:", "goes, " + height));
    }
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
    texts.add(
        row.losses()
            .loss(row.share())
            .filter(loss -> Double.isFinite(loss.value()))
            .map(loss -> PilotCells.most(loss, units))
            .orElse(PilotCells.loss(row.losses(), row.share(), units)));
    texts.add(row.needed(row.share(), units).orElse(row.floor().isPresent() ? "none" : ""));
    texts.add(PilotCells.interval(row.losses().loss(row.share()), row.margin(), units));
    if (models) {
      texts.add(PilotCells.band(row.widestFloor(), units::down, units::up));
    }
    texts.add(PilotCells.arrested(row.losses()));
    if (!models) {
      texts.add(row.way().map(way -> way.brief(units)).orElse(""));
    }
    return texts;
  }

  /**
   * The floors as planned beside those of the worse conditions.
   *
   * @param planned as planned
   * @param worse heavier, hotter, later
   * @return a line for each state and way out
   */
  Sheet.Grid compared(FloorBlock planned, FloorBlock worse) {
    String height = units.length().symbol();
    List<List<String>> lines = new ArrayList<>();
    for (PilotState state : request.states()) {
      String label = state.label();
      for (int i = 0; i < planned.rows(state).size(); i++) {
        FloorRow first = planned.rows(state).get(i);
        Optional<String> before = first.needed(first.share(), units);
        Optional<String> then = worse.rows(state).get(i).needed(first.share(), units);
        lines.add(
            List.of(
                label,
                first.recovery().label(),
                before.orElse("none"),
                then.orElse("none"),
                before
                    .flatMap(
                        less ->
                            then.map(
                                more ->
                                    Decimals.fixed(
                                        Double.parseDouble(more) - Double.parseDouble(less), 0)))
                    .orElse("")));
        label = "";
      }
    }
    return new Sheet.Grid(
        List.of(
            GridColumn.left("state"),
            GridColumn.left("recovery"),
            GridColumn.right("as planned:", "floor, " + height),
            GridColumn.right("heavier, hotter, later:", "floor, " + height),
            GridColumn.right("more", height)),
        lines);
  }

  /**
   * What to brief.
   *
   * @param block at one mass in one air
   * @param height the height at onset, m
   * @return a term for each state
   */
  List<Term> briefings(FloorBlock block, double height) {
    return request.states().stream()
        .map(state -> new Term(state.label(), briefing(height, block, state).text(units)))
        .toList();
  }

  /**
   * What to brief to pilots of one state.
   *
   * @param height the height at onset, m
   * @param block at one mass in one air
   * @param state the state
   * @return the briefing
   */
  HeightBriefing briefing(double height, FloorBlock block, PilotState state) {
    return HeightBriefing.of(height, request.groundShare(), block.rows(state));
  }

  /**
   * The latest moments.
   *
   * @param block at one mass in one air
   * @return a line for each way out
   */
  Sheet.Grid latest(FloorBlock block) {
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
