package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.report.Cell;
import io.github.ringstate.instructor.report.Column;
import io.github.ringstate.instructor.report.Table;
import java.util.List;

/** The columns of a loss table for machines. */
final class LossColumns {

  /** The columns of the CSV file. */
  static final List<Column<LossRow>> CELLS =
      List.of(
          new Column<>("craft", row -> Cell.text(row.conditions().craft().name())),
          new Column<>("mass_kg", row -> Cell.given(row.conditions().massKg())),
          new Column<>(
              "pressure_altitude_ft", row -> Cell.number(row.conditions().pressureAltitudeFt())),
          new Column<>("oat_c", row -> Cell.number(row.conditions().oatC())),
          new Column<>("entry", row -> Cell.text(row.entry())),
          new Column<>("recovery", row -> Cell.text(row.recovery().label())),
          new Column<>("delay_s", row -> Cell.given(row.delayS())),
          new Column<>("outcome", row -> Cell.text(row.ending().label())),
          new Column<>("altitude_loss_ft", row -> Cell.number(row.altitudeLossFt())),
          new Column<>(
              "loss_after_recognition_ft", row -> Cell.number(row.lossAfterRecognitionFt())),
          new Column<>("peak_descent_fpm", row -> Cell.number(row.peakDescentFpm())),
          new Column<>("time_to_arrest_s", row -> Cell.number(row.timeToArrestS())));

  /** What only JSON has. */
  static final List<Column<LossRow>> MORE =
      List.of(new Column<>("impact_speed_fpm", row -> Cell.number(row.impactFpm())));

  /** What belongs to a whole table. */
  static final List<Column<LossBlock>> BLOCKS =
      List.of(
          new Column<>("mass_kg", block -> Cell.given(block.conditions().massKg())),
          new Column<>(
              "pressure_altitude_ft",
              block -> Cell.number(block.conditions().pressureAltitudeFt())),
          new Column<>("oat_c", block -> Cell.number(block.conditions().oatC())),
          new Column<>(
              "density_altitude_ft", block -> Cell.number(block.conditions().densityAltitudeFt())),
          new Column<>(
              "hover_power_kw", block -> Cell.number(block.conditions().hover().neededKw())),
          new Column<>(
              "continuous_power_kw",
              block -> Cell.number(block.conditions().hover().continuousKw())),
          new Column<>(
              "short_time_power_kw",
              block -> Cell.number(block.conditions().hover().shortTimeKw())),
          new Column<>("in_short", block -> Cell.text(TakeAway.of(block))));

  private LossColumns() {}

  static Table<LossRow> cells(List<LossBlock> blocks) {
    return new Table<>(CELLS, blocks.stream().flatMap(block -> block.rows().stream()).toList());
  }
}
