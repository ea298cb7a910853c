package io.github.ringstate.instructor.loss;

import io.github.ringstate.calibration.FittedBands;
import io.github.ringstate.calibration.LossBand;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.Quantile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the fit of a fitted craft leaves open of the standard technique's losses, in one sentence:
 * of each way out of the wake at the longest delay of which bands are known.
 */
record OpenByFit(LossBlock block, UnitSystem units) {

  /** The sentence; empty where nothing is fitted, or no band is known. */
  String sentence() {
    List<String> ways = new ArrayList<>();
    block
        .recoveries()
        .forEach(
            recovery ->
                block.rows().stream()
                    .filter(row -> row.recovery().equals(recovery) && known(row).isPresent())
                    .max(Comparator.comparingDouble(LossRow::delay))
                    .ifPresent(row -> ways.add(way(row, known(row).orElseThrow()))));
    return ways.isEmpty() ? "" : LossMessages.SAY.openByFit(Words.and(ways));
  }

  private static Optional<FittedBands> known(LossRow row) {
    return row.fitted().filter(bands -> Double.isFinite(bands.numbers().low()));
  }

  private String way(LossRow row, FittedBands bands) {
    return LossMessages.SAY.openWay(
        row.recovery().label(),
        Decimals.brief(row.delay()),
        band(bands.whole()),
        band(bands.numbers()),
        units.length().symbol());
  }

  private String band(LossBand band) {
    return PilotCells.band(
        Optional.of(new Quantile(0.5, band.middle(), band.low(), band.high())),
        units::roundedLoss,
        units::roundedLoss);
  }
}
