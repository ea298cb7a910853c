package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Feet;
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

  private PilotTakeAway() {}

  /**
   * Puts a table into a sentence.
   *
   * @param block the table, with pilots
   * @return the sentence
   */
  static String of(LossBlock block) {
    if (block.pilots().stream().allMatch(row -> row.losses().samples() == 0)) {
      return "These conditions do not lead into the ring state, so the table says nothing of what"
          + " pilots would lose.";
    }
    List<String> parts = new ArrayList<>();
    for (RecoveryKind recovery : block.recoveries()) {
      parts.add(recovery.label() + " " + recovery(block, recovery));
    }
    return "What 95 % of the simulated pilots lost at most: " + String.join("; ", parts) + ".";
  }

  private static String recovery(LossBlock block, RecoveryKind recovery) {
    List<PilotRow> rows =
        block.pilots().stream()
            .filter(row -> row.recovery() == recovery)
            .sorted(Comparator.comparingDouble(row -> row.delayS().orElse(0)))
            .toList();
    List<PilotRow> ends = rows.size() == 1 ? rows : List.of(rows.get(0), rows.get(rows.size() - 1));
    return PilotTerms.and(ends.stream().map(PilotTakeAway::lost).toList());
  }

  private static String lost(PilotRow row) {
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
        : Feet.text(loss.get().value()) + " ft" + at;
  }
}
