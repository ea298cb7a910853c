package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongBiFunction;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Readings from CSV: a header, which may stand below some lines of another sort, then a line for
 * each reading. The separator is the comma, the semicolon or the tab, whichever the names in the
 * header need; numbers beside semicolons may have a decimal comma.
 */
final class CsvReadings {

  private final Readings readings;
  private final boolean decimalComma;
  private final TimeCells times;
  private final List<Place> places;

  /** Where in a line a quantity stands. */
  private record Place(RecordedQuantity quantity, int at, RecordedUnit unit) {}

  private CsvReadings(CsvHeader header, Readings readings, boolean decimalComma) {
    this.readings = readings;
    this.decimalComma = decimalComma;
    places =
        header.columns().entrySet().stream()
            .map(
                entry ->
                    new Place(
                        entry.getKey(),
                        header.names().indexOf(entry.getValue().name()),
                        entry.getValue().unit()))
            .toList();
    times = new TimeCells(places.get(0).unit());
  }

  /**
   * Reads all of a text.
   *
   * @return the columns that were taken, with the unit of each
   */
  static ColumnMap read(String text, ColumnMap map, Readings readings) {
    CsvText lines = CsvText.of(text);
    ColumnMap taken = all(lines.kept(), separator(lines.kept(), map), map, readings);
    if (lines.leftOut() > 0) {
      readings.note(
          RepairKind.UNREADABLE, null, lines.leftOut(), 0, Math.max(0, readings.size() - 1));
    }
    return taken;
  }

  /**
   * The separator with which most columns of the map are found in one of the first lines; if none
   * is found, a message shall quote cells, and the one that stands there most often is taken.
   */
  private static char separator(String text, ColumnMap map) {
    return most(text, (line, separator) -> found(line, separator, map))
        .or(() -> most(text, (line, one) -> line.chars().filter(any -> any == one).count()))
        .orElse(',');
  }

  private static Optional<Character> most(String text, ToLongBiFunction<String, Character> count) {
    Optional<Character> best = Optional.empty();
    long most = 0;
    for (char separator : new char[] {',', ';', '\t'}) {
      long here =
          text.lines()
              .limit(CsvHeader.WITHIN)
              .mapToLong(line -> count.applyAsLong(line, separator))
              .max()
              .orElse(0);
      if (here > most) {
        most = here;
        best = Optional.of(separator);
      }
    }
    return best;
  }

  private static long found(String line, char separator, ColumnMap map) {
    List<String> names =
        Stream.of(line.split(String.valueOf(separator), -1))
            .map(name -> name.replace("\"", "").strip())
            .toList();
    return map.in(names).values().stream().filter(column -> names.contains(column.name())).count();
  }

  private static ColumnMap all(String text, char separator, ColumnMap map, Readings readings) {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(separator)
            .setIgnoreEmptyLines(true)
            .setTrailingData(true)
            .setLenientEof(true)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      Iterator<CSVRecord> records = parser.iterator();
      CsvHeader header = CsvHeader.of(readings.file(), records, map);
      CsvReadings rows = new CsvReadings(header, readings, separator == ';');
      while (records.hasNext()) {
        rows.line(records.next());
      }
      return rows.taken(header.columns());
    } catch (IOException | UncheckedIOException bad) {
      throw UserError.file(readings.file(), "cannot be read as CSV: " + bad.getMessage(), bad);
    }
  }

  /** The columns with the units in which they were read. */
  private ColumnMap taken(Map<RecordedQuantity, ColumnMap.Column> columns) {
    Map<RecordedQuantity, ColumnMap.Column> taken = new EnumMap<>(columns);
    taken.computeIfPresent(RecordedQuantity.TIME, (time, column) -> readAs(column));
    return new ColumnMap(taken);
  }

  private ColumnMap.Column readAs(ColumnMap.Column time) {
    if (!times.unread().isEmpty()) {
      throw UserError.file(readings.file(), unread(time));
    }
    return new ColumnMap.Column(time.name(), times.unit());
  }

  private String unread(ColumnMap.Column time) {
    return "gives the time in column "
        + UserError.quoted(time.name())
        + " as "
        + UserError.quoted(times.unread())
        + ", which is no time in "
        + time.unit().key()
        + ": write a time of day as 23:58:40.5, a date and time as 2030-11-29T23:58:40.5Z or"
        + " seconds, or say which column and unit it is by "
        + CsvHeader.option(RecordedQuantity.TIME);
  }

  /** The time comes first, as it does in the order of the quantities. */
  private void line(CSVRecord line) {
    for (Place place : places) {
      String cell = place.at() < line.size() ? line.get(place.at()) : "";
      String plain = decimalComma ? cell.replace(',', '.') : cell;
      boolean time = place.quantity() == RecordedQuantity.TIME;
      double value = time ? times.seconds(plain) : place.unit().read(plain);
      boolean wrong = Double.isNaN(value) && !cell.isBlank();
      if (time) {
        readings.add(value);
        if (wrong) {
          readings.note(RepairKind.UNREADABLE, null);
        }
      } else if (wrong) {
        readings.note(RepairKind.NOT_A_NUMBER, place.quantity());
      } else {
        readings.put(place.quantity(), value);
      }
    }
  }
}
