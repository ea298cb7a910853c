package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Feet;
import io.github.ringstate.instructor.report.Sheet;
import io.github.ringstate.instructor.report.Sheet.GridColumn;
import io.github.ringstate.study.Quantile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A loss table of many pilots laid out for people: a group of lines for each recovery. */
final class PilotGrid {

  private PilotGrid() {}

  static Sheet.Grid of(LossBlock block, LossRequest request) {
    boolean delays = request.state().isEmpty();
    boolean ground = request.approach().heightFt().isPresent();
    boolean models =
        request.pool().flatMap(pool -> pool.models().stream().boxed().findFirst()).isPresent();
    List<GridColumn> columns = new ArrayList<>();
    columns.add(GridColumn.left("recovery"));
    if (delays) {
      columns.add(GridColumn.right("delay", "s"));
      columns.add(GridColumn.right("standard", "loss, ft"));
    }
    columns.add(GridColumn.right("50 %", "loss, ft"));
    columns.add(GridColumn.right("95 %", "loss, ft"));
    columns.add(GridColumn.right("95 % lies in", "ft"));
    if (models) {
      columns.add(GridColumn.right("and model", "ft"));
    }
    columns.add(GridColumn.right("arrested", "share"));
    List<List<String>> lines = new ArrayList<>();
    Optional<RecoveryKind> above = Optional.empty();
    for (LossLine line : block.lines()) {
      List<String> texts = new ArrayList<>();
      boolean same = above.isPresent() && above.get() == line.recovery();
      texts.add(same ? "" : line.recovery().label());
      above = Optional.of(line.recovery());
      if (delays) {
        texts.add(Decimals.given(line.delayS().orElseThrow()));
        texts.add(line.standard().map(LossSheet::cell).orElse(""));
      }
      texts.addAll(pilots(line.pilots().orElseThrow().losses(), models, ground));
      lines.add(texts);
    }
    return new Sheet.Grid(columns, lines);
  }

  private static List<String> pilots(PilotLosses losses, boolean models, boolean ground) {
    List<String> texts = new ArrayList<>();
    texts.add(text(losses, 0.5, ground));
    texts.add(text(losses, 0.95, ground));
    texts.add(PilotCells.band(losses.lossFt(0.95), Feet::rounded, Feet::rounded));
    if (models) {
      texts.add(PilotCells.band(losses.widestLossFt(0.95), Feet::rounded, Feet::rounded));
    }
    texts.add(PilotCells.arrested(losses));
    return texts;
  }

  private static String text(PilotLosses losses, double share, boolean ground) {
    Optional<Quantile> quantile = losses.lossFt(share);
    if (quantile.isEmpty()) {
      return "no ring state";
    }
    double feet = quantile.get().value();
    return Double.isInfinite(feet) ? ground ? "ground" : "not arrested" : Feet.text(feet);
  }
}
