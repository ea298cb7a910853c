package io.github.ringstate.instructor.conditions;

import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** Conditions as fields for machines, the same in every report. */
public final class ConditionCells {

  private static final List<Column<Conditions>> LOADING =
      List.of(
          new Column<>("mass_kg", conditions -> Cell.given(conditions.massKg())),
          new Column<>(
              "pressure_altitude_ft",
              conditions -> Cell.in(Unit.FOOT, conditions.air().pressureAltitude())),
          new Column<>("oat_c", conditions -> Cell.number(conditions.oatC())));

  private static final List<Column<Conditions>> AIR =
      List.of(
          new Column<>(
              "density_altitude_ft",
              conditions -> Cell.in(Unit.FOOT, conditions.air().densityAltitude())));

  private static final List<Column<Conditions>> POWER =
      List.of(
          new Column<>(
              "hover_power_kw", conditions -> Cell.in(Unit.KILOWATT, conditions.hover().needed())),
          new Column<>(
              "continuous_power_kw",
              conditions -> Cell.in(Unit.KILOWATT, conditions.hover().continuous())),
          new Column<>(
              "take_off_power_kw",
              conditions -> Cell.in(Unit.KILOWATT, conditions.hover().takeOff())));

  private ConditionCells() {}

  /**
   * Mass, pressure altitude and temperature of each row of a table.
   *
   * @param conditions those of a row
   * @param <R> a row
   * @return a column each
   */
  public static <R> List<Column<R>> loading(Function<R, Conditions> conditions) {
    return of(LOADING, conditions);
  }

  /**
   * All of the conditions of each row of a table.
   *
   * @param conditions those of a row
   * @param <R> a row
   * @return a column each
   */
  public static <R> List<Column<R>> all(Function<R, Conditions> conditions) {
    return Stream.of(LOADING, AIR, POWER).flatMap(part -> of(part, conditions).stream()).toList();
  }

  /**
   * The conditions of a whole report, its craft first.
   *
   * @param conditions the conditions
   * @param power whether the power is among them
   * @return fields by name
   */
  public static Map<String, Cell> facts(Conditions conditions, boolean power) {
    Map<String, Cell> facts = new LinkedHashMap<>(CraftWords.facts(conditions.craft()));
    Stream.of(LOADING, AIR, power ? POWER : List.<Column<Conditions>>of())
        .flatMap(List::stream)
        .forEach(column -> facts.put(column.name(), column.value().apply(conditions)));
    return facts;
  }

  private static <R> List<Column<R>> of(
      List<Column<Conditions>> columns, Function<R, Conditions> conditions) {
    return columns.stream()
        .map(column -> new Column<>(column.name(), conditions.andThen(column.value())))
        .toList();
  }
}
