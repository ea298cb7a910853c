package io.github.ringstate.files.flight;

import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.files.row.ChunkRows;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotFlight;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * The history of a flight, or what each pilot of a study was like and lost, as a table in a file:
 * CSV or Parquet by the ending of its name. Each column has its unit in its name; SI units.
 */
public final class FlightTables {

  private FlightTables() {}

  /**
   * Writes instants of a flight.
   *
   * @param file where to, with an ending of {@link RowFormat#ENDINGS}
   * @param instants what {@link io.github.ringstate.encounter.History} gave
   * @param about what is kept beside the rows where the format has a place for it, for instance the
   *     encounter in words
   * @throws io.github.ringstate.files.error.UserError if the file cannot be written
   */
  public static void write(WholeFile file, List<Instant> instants, String about) {
    Map<Column, Function<Instant, Object>> columns = new LinkedHashMap<>();
    columns.put(new Column("phase", Column.Type.WORD), Instant::phase);
    for (FlightQuantity quantity : FlightQuantity.values()) {
      columns.put(new Column(quantity.key(), Column.Type.NUMBER), instant -> instant.get(quantity));
    }
    write(file, columns, instants, about);
  }

  /**
   * Writes the pilots of a study, one in a row: number, delay, recovery, the numbers of their
   * technique, and what came of them. What a pilot or an ending does not have is empty.
   *
   * @param file where to, with an ending of {@link RowFormat#ENDINGS}
   * @param spread the losses, with their flights
   * @param about what is kept beside the rows where the format has a place for it
   * @throws io.github.ringstate.files.error.UserError if the file cannot be written
   */
  public static void write(WholeFile file, LossSpread spread, String about) {
    List<PilotFlight> flights = spread.flights();
    Set<Parameter> drawn = new LinkedHashSet<>();
    flights.forEach(flight -> drawn.addAll(flight.drawn().parameters()));
    Map<Column, Function<PilotFlight, Object>> columns = new LinkedHashMap<>();
    columns.put(new Column("pilot", Column.Type.INTEGER), PilotFlight::number);
    columns.put(new Column("delay_s", Column.Type.NUMBER), PilotFlight::delay);
    columns.put(
        new Column("recovery", Column.Type.WORD), flight -> flight.encounter().recovery().name());
    for (Parameter number : drawn) {
      columns.put(
          new Column(number.key(), Column.Type.NUMBER),
          flight ->
              flight.drawn().parameters().contains(number)
                  ? flight.drawn().get(number)
                  : Double.NaN);
    }
    columns.put(
        new Column("ending", Column.Type.WORD), flight -> flight.outcome().ending().label());
    result(columns, "altitude_loss_m", Outcome::altitudeLoss);
    result(columns, "loss_after_recognition_m", Outcome::lossAfterRecognition);
    result(columns, "peak_descent_m_per_s", Outcome::peakDescent);
    result(columns, "time_to_arrest_s", Outcome::timeToArrest);
    result(columns, "impact_speed_m_per_s", Outcome::impactSpeed);
    result(columns, "onset_time_s", Outcome::onsetTime);
    write(file, columns, flights, about);
  }

  private static void result(
      Map<Column, Function<PilotFlight, Object>> columns,
      String name,
      Function<Outcome, OptionalDouble> result) {
    columns.put(
        new Column(name, Column.Type.NUMBER),
        flight -> result.apply(flight.outcome()).orElse(Double.NaN));
  }

  private static <T> void write(
      WholeFile file, Map<Column, Function<T, Object>> columns, List<T> things, String about) {
    List<List<Object>> values =
        things.stream()
            .map(thing -> columns.values().stream().map(value -> value.apply(thing)).toList())
            .toList();
    Rows rows = Rows.of(List.copyOf(columns.keySet()), values);
    String name = file.place().getFileName().toString();
    RowFormat format =
        RowFormat.of(
            name.substring(name.lastIndexOf('.') + 1), rows.columns(), Map.of("about", about));
    ChunkRows chunk = ChunkRows.of(format, List.of(format.encode(rows)));
    file.replace(
        out -> {
          out.write(format.head());
          for (byte[] piece : chunk.pieces()) {
            out.write(piece);
          }
          out.write(format.tail(List.of(chunk.chunk())));
        });
  }
}
