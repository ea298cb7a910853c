package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunPlan;
import java.util.List;

/** The columns of a run for machines. */
final class RunsColumns {

  private final RunsRequest request;
  private final RunAnalysis analysis;

  RunsColumns(RunsRequest request, RunAnalysis analysis) {
    this.request = request;
    this.analysis = analysis;
  }

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
            new Column<>("loss_p95_ft", row -> Cell.in(Unit.FOOT, row.altitudeLoss())),
            new Column<>("height_ft", row -> Cell.given(Unit.FOOT, plan.height())),
            new Column<>("verdict", row -> Cell.text(row.judgement().verdict().label())),
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
        new Column<>("hover_margin_pct", row -> share(analysis.hoverMargin())),
        new Column<>(
            "loss_covered", row -> row.loss().isEmpty() ? Cell.NOTHING : Cell.text(covered(row))),
        new Column<>(
            "minimum_airspeed_limit_kt",
            row -> Cell.in(Unit.KNOT, row.judgement().minimumAirspeed())),
        new Column<>(
            "maximum_ground_speed_limit_kt",
            row -> Cell.in(Unit.KNOT, row.judgement().maximumGroundSpeed())),
        new Column<>(
            "airspeed_downwind_kt", row -> Cell.in(Unit.KNOT, analysis.airspeedDownwind())),
        new Column<>("escape", row -> Cell.text(EscapeWords.way(row))),
        new Column<>(
            "escape_deg",
            row ->
                row.escape()
                    .map(way -> Cell.number(EscapeWords.bearingDeg(row, way), 0))
                    .orElse(Cell.NOTHING)),
        new Column<>(
            "escape_exposure_s",
            row -> row.escape().map(way -> Cell.number(way.exposure())).orElse(Cell.NOTHING)),
        new Column<>(
            "relative_wind_deg",
            row -> Cell.number(Unit.DEGREE.fromSi(row.track().triangle().relativeWind()), 0)),
        new Column<>("tail_rotor_sectors", row -> Cell.text(EscapeWords.sectors(request, row))));
  }

  private static Cell share(double margin) {
    return Double.isInfinite(margin) ? Cell.NOTHING : Cell.in(Unit.PERCENT, margin);
  }

  private String reason(RunRow row) {
    return TrackFacts.of(request, analysis, row, UnitSystem.AVIATION).reason(row.judgement());
  }

  private String covered(RunRow row) {
    return row.isOver(request.plan()) ? "not-covered" : "covered";
  }
}
