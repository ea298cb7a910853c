package io.github.ringstate.instructor.loss;

import io.github.ringstate.calibration.FittedBands;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ConditionCells;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Share;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The columns of a loss table for machines. */
final class LossColumns {

  /** The columns of the CSV file. */
  private static List<Column<LossLine>> columns(String entry) {
    return Stream.of(
            List.<Column<LossLine>>of(
                new Column<>("craft", line -> Cell.text(line.conditions().craft().name()))),
            ConditionCells.loading(LossLine::conditions),
            List.<Column<LossLine>>of(
                new Column<>("entry", line -> Cell.text(entry)),
                new Column<>("recovery", line -> Cell.text(line.recovery().name())),
                new Column<>(
                    "delay_s",
                    line ->
                        line.delay().isPresent()
                            ? Cell.given(line.delay().getAsDouble())
                            : Cell.NOTHING),
                new Column<>(
                    "outcome",
                    line ->
                        line.standard()
                            .map(row -> Cell.text(row.ending().label()))
                            .orElse(Cell.NOTHING)),
                standard("altitude_loss_ft", Unit.FOOT, Outcome::altitudeLoss),
                standard("loss_after_recognition_ft", Unit.FOOT, Outcome::lossAfterRecognition),
                standard("peak_descent_fpm", Unit.FOOT_PER_MINUTE, Outcome::peakDescent),
                standard("time_to_arrest_s", Unit.SECOND, Outcome::timeToArrest),
                loss("p50_ft", 0.5, Quantile::value),
                loss("p50_low_ft", 0.5, Quantile::low),
                loss("p50_high_ft", 0.5, Quantile::high),
                loss("p90_ft", 0.9, Quantile::value),
                loss("p90_low_ft", 0.9, Quantile::low),
                loss("p90_high_ft", 0.9, Quantile::high),
                loss("p95_ft", 0.95, Quantile::value),
                loss("p95_low_ft", 0.95, Quantile::low),
                loss("p95_high_ft", 0.95, Quantile::high),
                pilots("arrested_share", losses -> PilotCells.share(losses.arrestedShare())),
                pilots(
                    "arrested_low_share",
                    losses -> PilotCells.share(losses.arrested(), Share::low)),
                pilots(
                    "arrested_high_share",
                    losses -> PilotCells.share(losses.arrested(), Share::high)),
                pilots("samples", losses -> Cell.number(losses.samples(), 0)),
                new Column<>(
                    "sensitive",
                    line ->
                        line.standard()
                            .map(row -> Cell.yesNo(row.sensitive()))
                            .orElse(Cell.NOTHING))))
        .flatMap(List::stream)
        .toList();
  }

  /**
   * What only JSON has.
   *
   * @param seesRing whether the flights tell when the ring state is left, which they do not where
   *     limits stand in for its boundary
   */
  static List<Column<LossLine>> more(boolean seesRing) {
    return List.of(
        new Column<>("way_out", line -> Cell.yesNo(line.recovery().wayOut())),
        new Column<>(
            "fell_through",
            line ->
                seesRing
                    ? line.standard().map(row -> Cell.yesNo(row.fellThrough())).orElse(Cell.NOTHING)
                    : Cell.NOTHING),
        standard("impact_speed_fpm", Unit.FOOT_PER_MINUTE, Outcome::impactSpeed),
        models("p95_models_ft", Quantile::value),
        models("p95_models_low_ft", Quantile::low),
        models("p95_models_high_ft", Quantile::high));
  }

  /** What only JSON has of a fitted craft. */
  static List<Column<LossLine>> fitted() {
    return List.of(
        fitted("fit_low_ft", bands -> bands.whole().low()),
        fitted("fit_high_ft", bands -> bands.whole().high()),
        fitted("fit_numbers_low_ft", bands -> bands.numbers().low()),
        fitted("fit_numbers_high_ft", bands -> bands.numbers().high()));
  }

  /** What belongs to a whole table. */
  static final List<Column<LossBlock>> BLOCKS =
      Stream.concat(
              ConditionCells.all(LossBlock::conditions).stream(),
              Stream.of(
                  new Column<LossBlock>(
                      "in_short", block -> Cell.text(block.inShort(UnitSystem.AVIATION)))))
          .toList();

  private LossColumns() {}

  private static Column<LossLine> standard(
      String name, Unit unit, Function<Outcome, OptionalDouble> number) {
    return new Column<>(
        name,
        line ->
            line.standard()
                .map(row -> Cell.in(unit, number.apply(row.outcome())))
                .orElse(Cell.NOTHING));
  }

  private static Column<LossLine> fitted(String name, ToDoubleFunction<FittedBands> end) {
    return new Column<>(
        name,
        line ->
            line.standard()
                .flatMap(LossRow::fitted)
                .map(end::applyAsDouble)
                .filter(Double::isFinite)
                .map(metres -> Cell.in(Unit.FOOT, metres))
                .orElse(Cell.NOTHING));
  }

  private static Column<LossLine> pilots(String name, Function<PilotLosses, Cell> field) {
    return new Column<>(
        name, line -> line.pilots().map(PilotRow::losses).map(field).orElse(Cell.NOTHING));
  }

  private static Column<LossLine> loss(String name, double share, Function<Quantile, Double> part) {
    return pilots(name, losses -> PilotCells.feet(losses.loss(share), part));
  }

  private static Column<LossLine> models(String name, Function<Quantile, Double> part) {
    return pilots(name, losses -> PilotCells.feet(losses.modelsLoss(0.95), part));
  }

  static Table<LossLine> cells(List<LossBlock> blocks, String entry) {
    return new Table<>(
        columns(entry), blocks.stream().flatMap(block -> block.lines().stream()).toList());
  }
}
