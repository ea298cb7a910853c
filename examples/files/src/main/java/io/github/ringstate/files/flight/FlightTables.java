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
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

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
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("phase", Column.Type.WORD));
    for (FlightQuantity quantity : FlightQuantity.values()) {
      columns.add(new Column(quantity.key(), Column.Type.NUMBER));
    }
    List<List<Object>> rows = new ArrayList<>();
    for (Instant instant : instants) {
      List<Object> row = new ArrayList<>();
      row.add(instant.phase());
      for (FlightQuantity quantity : FlightQuantity.values()) {
        row.add(instant.get(quantity));
      }
      rows.add(row);
    }
    write(file, Rows.of(columns, rows), about);
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
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("pilot", Column.Type.INTEGER));
    columns.add(new Column("delay_s", Column.Type.NUMBER));
    columns.add(new Column("recovery", Column.Type.WORD));
    drawn.forEach(number -> columns.add(new Column(number.key(), Column.Type.NUMBER)));
    columns.add(new Column("ending", Column.Type.WORD));
    for (String result :
        List.of(
            "altitude_loss_m",
            "loss_after_recognition_m",
            "peak_descent_m_per_s",
            "time_to_arrest_s",
            "impact_speed_m_per_s",
            "onset_time_s")) {
      columns.add(new Column(result, Column.Type.NUMBER));
    }
    List<List<Object>> rows = new ArrayList<>();
    flights.forEach(flight -> rows.add(row(flight, drawn)));
    write(file, Rows.of(columns, rows), about);
  }

  private static List<Object> row(PilotFlight flight, Set<Parameter> drawn) {
    List<Object> row = new ArrayList<>();
    row.add(flight.number());
    row.add(flight.delay());
    row.add(flight.encounter().recovery().name());
    for (Parameter number : drawn) {
      boolean has = flight.drawn().parameters().contains(number);
      row.add(has ? flight.drawn().get(number) : Double.NaN);
    }
    Outcome outcome = flight.outcome();
    row.add(outcome.ending().label());
    for (OptionalDouble result :
        List.of(
            outcome.altitudeLoss(),
            outcome.lossAfterRecognition(),
            outcome.peakDescent(),
            outcome.timeToArrest(),
            outcome.impactSpeed(),
            outcome.onsetTime())) {
      row.add(result.orElse(Double.NaN));
    }
    return row;
  }

  private static void write(WholeFile file, Rows rows, String about) {
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
