package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ConditionCells;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.Way;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Share;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The columns of a table of floors for machines. */
final class FloorColumns {

  /** The columns of the CSV file. */
  static final List<Column<FloorRow>> CELLS =
      Stream.of(
              List.<Column<FloorRow>>of(
                  new Column<>("craft", row -> Cell.text(row.conditions().craft().name()))),
              ConditionCells.loading(FloorRow::conditions),
              List.<Column<FloorRow>>of(
                  new Column<>("entry", row -> Cell.text(row.entry())),
                  new Column<>("state", row -> Cell.text(row.state().label())),
                  new Column<>("recovery", row -> Cell.text(row.recovery().name())),
                  new Column<>("share", row -> Cell.given(row.share())),
                  new Column<>(
                      "floor_ft", row -> PilotCells.feet(row.floor(), up(Quantile::value))),
                  new Column<>(
                      "floor_low_ft", row -> PilotCells.feet(row.floor(), down(Quantile::low))),
                  new Column<>(
                      "floor_high_ft", row -> PilotCells.feet(row.floor(), up(Quantile::high))),
                  new Column<>("samples", row -> Cell.number(row.losses().samples(), 0))))
          .flatMap(List::stream)
          .toList();

  /** What only JSON has. */
  static final List<Column<FloorRow>> MORE =
      List.of(
          new Column<>("way_out", row -> Cell.yesNo(row.recovery().wayOut())),
          new Column<>("arrested_share", row -> PilotCells.share(row.losses().arrestedShare())),
          new Column<>(
              "arrested_low_share", row -> PilotCells.share(row.losses().arrested(), Share::low)),
          new Column<>(
              "arrested_high_share", row -> PilotCells.share(row.losses().arrested(), Share::high)),
          loss("p50_ft", 0.5, Quantile::value),
          loss("p50_low_ft", 0.5, Quantile::low),
          loss("p50_high_ft", 0.5, Quantile::high),
          loss("p95_ft", 0.95, Quantile::value),
          loss("p95_low_ft", 0.95, Quantile::low),
          loss("p95_high_ft", 0.95, Quantile::high),
          new Column<>(
              "floor_models_ft", row -> PilotCells.feet(row.modelsFloor(), up(Quantile::value))),
          new Column<>(
              "floor_models_low_ft",
              row -> PilotCells.feet(row.modelsFloor(), down(Quantile::low))),
          new Column<>(
              "floor_models_high_ft",
              row -> PilotCells.feet(row.modelsFloor(), up(Quantile::high))),
          new Column<>("way_ahead_ft", row -> way(row, Way::ahead)),
          new Column<>("way_right_ft", row -> way(row, Way::right)));

  private static Cell way(FloorRow row, ToDoubleFunction<Way> part) {
    return row.way().map(way -> Cell.in(Unit.FOOT, part.applyAsDouble(way))).orElse(Cell.NOTHING);
  }

  /** What belongs to a whole table. */
  static List<Column<FloorBlock>> blocks(FloorRequest request) {
    return Stream.concat(
            ConditionCells.all(FloorBlock::conditions).stream(),
            Stream.of(
                new Column<FloorBlock>(
                    "in_short",
                    block -> Cell.text(FloorTakeAway.of(block, request, UnitSystem.AVIATION)))))
        .toList();
  }

  /**
   * What only a briefing for a height has.
   *
   * @param height the height at onset, m
   * @param orders what is briefed
   */
  static List<Column<FloorRow>> ground(double height, List<StateBriefing> orders) {
    Set<FloorRow> briefed = Collections.newSetFromMap(new IdentityHashMap<>());
    orders.forEach(order -> order.briefing().briefed().ifPresent(briefed::add));
    return List.of(
        ground("ground_share", height, Share::value),
        ground("ground_low_share", height, Share::low),
        ground("ground_high_share", height, Share::high),
        new Column<>("briefed", row -> Cell.yesNo(briefed.contains(row))));
  }

  /** What to brief to each state. */
  static final List<Column<StateBriefing>> ORDERS =
      List.of(
          new Column<StateBriefing>("mass_kg", order -> Cell.given(order.conditions().massKg())),
          new Column<StateBriefing>(
              "pressure_altitude_ft",
              order -> Cell.in(Unit.FOOT, order.conditions().air().pressureAltitude())),
          new Column<>("state", order -> Cell.text(order.state().label())),
          new Column<>("order", order -> Cell.text(order.briefing().order(UnitSystem.AVIATION))),
          new Column<>("reason", order -> Cell.text(order.briefing().reason(UnitSystem.AVIATION))));

  private static Column<FloorRow> ground(String name, double height, Function<Share, Double> part) {
    return new Column<>(name, row -> PilotCells.share(row.losses().shareLosing(height), part));
  }

  /** The latest moments. */
  static final List<Column<LatestMoment>> LATEST =
      List.of(
          new Column<LatestMoment>("mass_kg", latest -> Cell.given(latest.conditions().massKg())),
          new Column<LatestMoment>(
              "pressure_altitude_ft",
              latest -> Cell.in(Unit.FOOT, latest.conditions().air().pressureAltitude())),
          new Column<>("recovery", latest -> Cell.text(latest.recovery().name())),
          new Column<>(
              "latest_delay_s",
              latest ->
                  latest.delayS().isPresent()
                      ? Cell.given(latest.delayS().getAsDouble())
                      : Cell.NOTHING));

  private FloorColumns() {}

  private static Column<FloorRow> loss(String name, double share, Function<Quantile, Double> part) {
    return new Column<>(name, row -> PilotCells.feet(row.losses().loss(share), part));
  }

  private static Function<Quantile, Double> up(Function<Quantile, Double> part) {
    return tenths(part, feet -> Decimals.up(feet, 1));
  }

  private static Function<Quantile, Double> down(Function<Quantile, Double> part) {
    return tenths(part, feet -> Decimals.down(feet, 1));
  }

  /** Rounded as they are written, in feet. */
  private static Function<Quantile, Double> tenths(
      Function<Quantile, Double> part, DoubleUnaryOperator rounding) {
    return part.andThen(
        height ->
            Double.isInfinite(height)
                ? height
                : Unit.FOOT.toSi(rounding.applyAsDouble(Unit.FOOT.fromSi(height))));
  }
}
