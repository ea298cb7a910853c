package io.github.ringstate.instructor.loss;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A loss table of many pilots laid out for people: a group of lines for each recovery. */
final class PilotGrid {

  private PilotGrid() {}

  static Sheet.Grid of(LossBlock block, LossRequest request, UnitSystem units) {
    String loss = "loss, " + units.length().symbol();
    boolean delays = request.state().isEmpty();
    boolean models = request.pool().flatMap(Pool::models).isPresent();
    List<GridColumn> columns = new ArrayList<>();
    columns.add(GridColumn.left("recovery"));
    if (delays) {
      columns.add(GridColumn.right("delay", "s"));
      columns.add(GridColumn.right("standard", loss));
    }
    columns.add(GridColumn.right("50 %", loss));
    columns.add(GridColumn.right("95 %", loss));
    columns.add(GridColumn.right("95 % conf.", "interval, " + units.length().symbol()));
    if (models) {
      columns.add(GridColumn.right("and model", units.length().symbol()));
    }
    columns.add(GridColumn.right("arrested", "share"));
    List<List<String>> lines = new ArrayList<>();
    boolean marked = false;
    Optional<Technique> above = Optional.empty();
    for (LossLine line : block.lines()) {
      List<String> texts = new ArrayList<>();
      boolean same = above.equals(Optional.of(line.recovery()));
      texts.add(same ? "" : line.recovery().label());
      if (!same && !marked && !line.recovery().wayOut()) {
        lines.add(Sheet.Grid.heading(0, NotAWayOut.HEAD, columns.size()));
        marked = true;
      }
      above = Optional.of(line.recovery());
      if (delays) {
        texts.add(Decimals.given(line.delay().orElseThrow()));
        texts.add(line.standard().map(row -> LossSheet.cell(row, units)).orElse(""));
      }
      texts.addAll(pilots(line.pilots().orElseThrow().losses(), models, units));
      lines.add(texts);
    }
    return new Sheet.Grid(columns, lines);
  }

  private static List<String> pilots(PilotLosses losses, boolean models, UnitSystem units) {
    List<String> texts = new ArrayList<>();
    texts.add(PilotCells.loss(losses, 0.5, units));
    texts.add(PilotCells.loss(losses, 0.95, units));
    texts.add(PilotCells.interval(losses.loss(0.95), units));
    if (models) {
      texts.add(PilotCells.band(losses.widestLoss(0.95), units::roundedLoss, units::roundedLoss));
    }
    texts.add(PilotCells.arrested(losses));
    return texts;
  }
}
