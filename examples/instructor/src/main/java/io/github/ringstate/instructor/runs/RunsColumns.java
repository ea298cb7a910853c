package io.github.ringstate.instructor.runs;

import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunPlan;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The columns of a run for machines. */
record RunsColumns(RunsRequest request, RunAnalysis analysis) {

  /** The columns of the CSV file. */
  Table<RunRow> tracks() {
    RunPlan plan = request.plan();
    return new Table<>(
        List.of(
            new Column<>("track_deg", row -> Cell.number(row.trackDeg(), 0)),
            new Column<>("ground_speed_kt", row -> Cell.given(Unit.KNOT, plan.groundSpeed())),
            new Column<>(
                "airspeed_kt", row -> Cell.in(Unit.KNOT, row.track().triangle().airspeed())),
            new Column<>(
                "tailwind_kt", row -> Cell.in(Unit.KNOT, row.track().triangle().tailwind())),
            new Column<>(
                "crosswind_kt", row -> Cell.in(Unit.KNOT, row.track().triangle().crosswind())),
            new Column<>("power_margin_pct", row -> share(row.track().continuousMargin())),
            new Column<>(
                "boundary_margin_fpm",
                row -> Cell.in(Unit.FOOT_PER_MINUTE, row.track().boundaryMargin())),
            new Column<>("loss_p95_ft", row -> loss(analysis.worst(), RunLoss::most)),
            new Column<>("loss_p95_low_ft", row -> loss(analysis.worst(), RunLoss::mostLow)),
            new Column<>("loss_p95_high_ft", row -> loss(analysis.worst(), RunLoss::mostHigh)),
            new Column<>("height_ft", row -> Cell.given(Unit.FOOT, plan.height())),
            new Column<>("verdict", row -> Cell.text(row.verdict().label())),
            new Column<>("reason", row -> Cell.text(reason(row)))),
        analysis.rows());
  }

  /** What only JSON has. */
  List<Column<RunRow>> more() {
    return List.of(
        new Column<>(
            "minimum_airspeed_kt", row -> Cell.in(Unit.KNOT, row.track().minimumAirspeed())),
        new Column<>(
            "maximum_airspeed_kt", row -> Cell.in(Unit.KNOT, row.track().maximumAirspeed())),
        new Column<>("power_kw", row -> Cell.in(Unit.KILOWATT, row.track().power())),
        new Column<>("take_off_margin_pct", row -> share(row.track().takeOffMargin())),
        new Column<>("hover_margin_pct", row -> share(row.judgement().hover().margin())),
        new Column<>(
            "hover_continuous_margin_pct",
            row -> share(row.judgement().hover().continuousMargin())),
        new Column<>("own_loss_p95_ft", row -> loss(row.own(), RunLoss::most)),
        new Column<>("own_loss_p95_low_ft", row -> loss(row.own(), RunLoss::mostLow)),
        new Column<>("own_loss_p95_high_ft", row -> loss(row.own(), RunLoss::mostHigh)),
        new Column<>("loss_covered", row -> covered()),
        new Column<>("height_needed_ft", row -> finite(row.judgement().height().needed())),
        new Column<>(
            "minimum_airspeed_limit_kt",
            row -> Cell.in(Unit.KNOT, row.judgement().minimumAirspeed())),
        new Column<>(
            "ground_speed_instead_kt",
            row -> Cell.in(Unit.KNOT, row.judgement().groundSpeedInstead())),
        new Column<>(
            "airspeed_downwind_kt", row -> Cell.in(Unit.KNOT, row.judgement().turn().airspeed())),
        new Column<>(
            "ground_speed_downwind_kt",
            row -> Cell.in(Unit.KNOT, row.judgement().turn().groundSpeed())),
        new Column<>("escape", row -> Cell.text(Headings.side(analysis.technique(), sense()))),
        new Column<>(
            "escape_deg",
            row ->
                Cell.number(Headings.escapeDeg(analysis.technique(), sense(), row.trackDeg()), 0)),
        new Column<>(
            "relative_wind_deg",
            row -> Cell.number(Unit.DEGREE.fromSi(row.track().triangle().relativeWind()), 0)),
        new Column<>(
            "tail_rotor_sectors", row -> Cell.text(Headings.sectors(request.plan(), row))));
  }

  private RotationSense sense() {
    return request.plan().craft().sense();
  }

  private static Cell loss(Optional<RunLoss> loss, ToDoubleFunction<RunLoss> part) {
    return loss.map(found -> finite(part.applyAsDouble(found))).orElse(Cell.NOTHING);
  }

  private static Cell finite(double metres) {
    return Double.isInfinite(metres) ? Cell.NOTHING : Cell.in(Unit.FOOT, metres);
  }

  private static Cell share(double margin) {
    return Double.isInfinite(margin) ? Cell.NOTHING : Cell.in(Unit.PERCENT, margin);
  }

  private String reason(RunRow row) {
    return TrackFacts.of(request, analysis, row, UnitSystem.AVIATION).reason(row);
  }

  private Cell covered() {
    if (analysis.worst().isEmpty()) {
      return Cell.NOTHING;
    }
    boolean covered = request.plan().covers(analysis.worst().get().most());
    return Cell.text(covered ? "covered" : "not-covered");
  }
}
