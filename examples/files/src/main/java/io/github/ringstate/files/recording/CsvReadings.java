package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * Readings from CSV: a header, which may stand below some lines of another sort, then a line for
 * each reading. The separator is the comma, the semicolon or the tab, whichever the names in the
 * header need; numbers beside semicolons may have a decimal comma.
 */
final class CsvReadings {

  /** The header stands among so many first lines. */
  private static final int HEADER_WITHIN = 50;

  private final ColumnMap map;
  private final Readings readings;
  private final boolean decimalComma;
  private int[] places = new int[0];
  private RecordedQuantity[] quantities = new RecordedQuantity[0];
  private RecordedUnit[] units = new RecordedUnit[0];

  private CsvReadings(ColumnMap map, Readings readings, boolean decimalComma) {
    this.map = map;
    this.readings = readings;
    this.decimalComma = decimalComma;
  }

  /** Reads all of a text. */
  static void read(String text, ColumnMap map, Readings readings) {
    CsvText lines = CsvText.of(text);
    char separator = separator(lines.kept(), map);
    new CsvReadings(map, readings, separator == ';').all(lines.kept(), separator);
    if (lines.leftOut() > 0) {
      readings.note(
          RepairKind.UNREADABLE, null, lines.leftOut(), 0, Math.max(0, readings.size() - 1));
    }
  }

  /** The separator with which most columns of the map are found in one of the first lines. */
  private static char separator(String text, ColumnMap map) {
    char best = ',';
    long most = 0;
    for (char separator : new char[] {',', ';', '\t'}) {
      long found =
          text.lines()
              .limit(HEADER_WITHIN)
              .mapToLong(line -> found(line, separator, map))
              .max()
              .orElse(0);
      if (found > most) {
        most = found;
        best = separator;
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

  private void all(String text, char separator) {
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
      header(records);
      while (records.hasNext()) {
        line(records.next());
      }
    } catch (IOException | UncheckedIOException bad) {
      throw UserError.file(readings.file(), "cannot be read as CSV: " + bad.getMessage(), bad);
    }
  }

  private void header(Iterator<CSVRecord> records) {
    List<String> first = List.of();
    for (int i = 0; i < HEADER_WITHIN && records.hasNext(); i++) {
      List<String> names = records.next().stream().map(String::strip).toList();
      Map<RecordedQuantity, ColumnMap.Column> columns = map.in(names);
      ColumnMap.Column time = columns.get(RecordedQuantity.TIME);
      if (time != null && names.contains(time.name())) {
        take(names, columns);
        return;
      }
      first = first.size() < names.size() ? names : first;
    }
    throw UserError.file(
        readings.file(),
        "has no column for the time"
            + (map.columns().isEmpty()
                ? " of a name such as time_s; its columns may need a map"
                : named(map.columns().get(RecordedQuantity.TIME)))
            + found(first),
        null);
  }

  private static String named(ColumnMap.@Nullable Column column) {
    return column == null ? ", nor does the map name one" : " " + UserError.quoted(column.name());
  }

  private static String found(List<String> names) {
    return "; its longest line in the beginning is " + UserError.quoted(String.join(", ", names));
  }

  private void take(List<String> names, Map<RecordedQuantity, ColumnMap.Column> columns) {
    quantities = new RecordedQuantity[columns.size()];
    places = new int[quantities.length];
    units = new RecordedUnit[quantities.length];
    int taken = 0;
    for (Map.Entry<RecordedQuantity, ColumnMap.Column> entry : columns.entrySet()) {
      String name = entry.getValue().name();
      if (!names.contains(name)) {
        throw UserError.file(
            readings.file(),
            "has no column "
                + UserError.quoted(name)
                + ", which the map names for "
                + entry.getKey().key()
                + UserError.ALLOWED
                + names.stream().map(UserError::quoted).collect(Collectors.joining(", ")),
            null);
      }
      quantities[taken] = entry.getKey();
      places[taken] = names.indexOf(name);
      units[taken] = entry.getValue().unit();
      taken++;
    }
  }

  /** The time comes first, as it does in the order of the quantities. */
  private void line(CSVRecord line) {
    for (int i = 0; i < quantities.length; i++) {
      String cell = places[i] < line.size() ? line.get(places[i]) : "";
      double value = value(cell, units[i]);
      boolean wrong = Double.isNaN(value) && !cell.isBlank();
      if (quantities[i] == RecordedQuantity.TIME) {
        readings.add(value);
        if (wrong) {
          readings.note(RepairKind.UNREADABLE, null);
        }
      } else if (wrong) {
        readings.note(RepairKind.NOT_A_NUMBER, quantities[i]);
      } else {
        readings.put(quantities[i], value);
      }
    }
  }

  private double value(String cell, RecordedUnit unit) {
    if (unit == RecordedUnit.ISO_TIME) {
      return Moments.seconds(cell);
    }
    return unit.toSi(Numerals.number(decimalComma ? cell.replace(',', '.') : cell));
  }
}
