package io.github.ringstate.instructor.loss;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.Quantile;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a pilot would take from a loss table of many pilots, in one sentence. It says what simulated
 * pilots did, and calls no height and no delay safe.
 */
record PilotTakeAway(LossBlock block, UnitSystem units) {

  String sentence() {
    if (block.pilots().stream().allMatch(row -> row.losses().samples() == 0)) {
      return LossMessages.SAY.noRingState();
    }
    return LossMessages.SAY.most(
        block.recoveries().stream()
            .map(recovery -> recovery.shown() + " " + recovery(recovery))
            .collect(Collectors.joining("; ")));
  }

  private String recovery(Technique recovery) {
    List<PilotRow> rows =
        block.pilots().stream()
            .filter(row -> row.recovery().equals(recovery))
            .sorted(Comparator.comparingDouble(row -> row.delay().orElse(0)))
            .toList();
    List<PilotRow> ends = rows.size() == 1 ? rows : List.of(rows.get(0), rows.get(rows.size() - 1));
    return Words.and(ends.stream().map(this::lost).toList());
  }

  private String lost(PilotRow row) {
    Optional<Quantile> loss = row.losses().loss(LossPage.MOST);
    return LossMessages.SAY.mostAt(
        loss.filter(known -> Double.isFinite(known.value()))
            .map(known -> PilotCells.loss(known, units) + " " + units.length().symbol())
            .orElse(""),
        loss.isPresent(),
        row.losses().failure().equals(PilotLosses.GROUND),
        PilotCells.arrested(row.losses()),
        row.delay().isPresent() ? Decimals.brief(row.delay().getAsDouble()) : "");
  }
}
