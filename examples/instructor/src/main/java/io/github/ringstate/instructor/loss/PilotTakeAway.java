package io.github.ringstate.instructor.loss;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.Quantile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a pilot would take from a loss table of many pilots, in one sentence. It says what simulated
 * pilots did, and calls no height and no delay safe.
 */
final class PilotTakeAway {

  private final LossBlock block;
  private final UnitSystem units;

  private PilotTakeAway(LossBlock block, UnitSystem units) {
    this.block = block;
    this.units = units;
  }

  /**
   * Puts a table into a sentence.
   *
   * @param block the table, with pilots
   * @param units the units to speak in
   * @return the sentence
   */
  static String of(LossBlock block, UnitSystem units) {
    return new PilotTakeAway(block, units).sentence();
  }

  private String sentence() {
    if (block.pilots().stream().allMatch(row -> row.losses().samples() == 0)) {
      return "These conditions do not lead into the ring state, so the table says nothing of what"
          + " pilots would lose.";
    }
    List<String> parts = new ArrayList<>();
    for (Technique recovery : block.recoveries()) {
      parts.add(recovery.shown() + " " + recovery(recovery));
    }
    return "What 95 % of the simulated pilots lost at most: " + String.join("; ", parts) + ".";
  }

  private String recovery(Technique recovery) {
    List<PilotRow> rows =
        block.pilots().stream()
            .filter(row -> row.recovery().equals(recovery))
            .sorted(Comparator.comparingDouble(row -> row.delayS().orElse(0)))
            .toList();
    List<PilotRow> ends = rows.size() == 1 ? rows : List.of(rows.get(0), rows.get(rows.size() - 1));
    return PilotTerms.and(ends.stream().map(this::lost).toList());
  }

  private String lost(PilotRow row) {
    String at =
        row.delayS().isPresent() ? " at " + Decimals.brief(row.delayS().getAsDouble()) + " s" : "";
    Optional<Quantile> loss = row.losses().lossFt(0.95);
    if (loss.isEmpty()) {
      return "does not meet the ring state" + at;
    }
    return Double.isInfinite(loss.get().value())
        ? "without limit"
            + at
            + ", since only "
            + PilotCells.arrested(row.losses())
            + " arrested the descent"
        : units.lost(loss.get().value()) + " " + units.length().symbol() + at;
  }
}
