package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/**
 * The header of a CSV file: the first line that has the column of the time.
 *
 * @param names the names in it
 * @param columns which of them hold what
 */
record CsvHeader(List<String> names, Map<RecordedQuantity, ColumnMap.Column> columns) {

  /** It stands among so many first lines. */
  static final int WITHIN = 50;

  /**
   * Finds the header.
   *
   * @param file the file's name, for messages
   * @param records the lines of the file, of which those up to the header are taken
   * @param map what the user says of the columns
   * @throws UserError if there is none, or if it has no column of a height
   */
  static CsvHeader of(String file, Iterator<CSVRecord> records, ColumnMap map) {
    List<String> likely = List.of();
    for (int i = 0; i < WITHIN && records.hasNext(); i++) {
      List<String> names = records.next().stream().map(String::strip).toList();
      CsvHeader header = new CsvHeader(names, map.in(names));
      ColumnMap.Column time = header.columns.get(RecordedQuantity.TIME);
      if (time != null && names.contains(time.name())) {
        header.requireAll(file);
        header.requireHeight(file);
        return header;
      }
      likely = words(names) > words(likely) ? names : likely;
    }
    throw UserError.file(file, "has no column for the time" + help(map, likely));
  }

  private static String help(ColumnMap map, List<String> likely) {
    if (likely.isEmpty()) {
      return " and no line with names of columns: begin it with one such as"
          + " time_s,height_ft,ground_speed_kt,track_deg";
    }
    ColumnMap.Column time = map.columns().get(RecordedQuantity.TIME);
    return (time == null ? ": say" : " " + UserError.quoted(time.name()) + ": say")
        + " which it is by "
        + option(RecordedQuantity.TIME)
        + " or by a name such as time_s; its header is "
        + UserError.quoted(String.join(", ", likely));
  }

  /** How a user names the column of a quantity. */
  static String option(RecordedQuantity quantity) {
    return ColumnMap.OPTION
        + " "
        + quantity.key()
        + "=COLUMN:UNIT ("
        + ColumnMap.units(quantity)
        + ")";
  }

  /** How many cells are words, not numbers or times. */
  private static long words(List<String> cells) {
    return cells.stream()
        .filter(cell -> cell.codePoints().anyMatch(Character::isLetter))
        .filter(cell -> Double.isNaN(Numerals.number(cell)) && Double.isNaN(Moments.seconds(cell)))
        .count();
  }

  private void requireAll(String file) {
    columns.forEach(
        (quantity, column) -> {
          if (!names.contains(column.name())) {
            throw UserError.file(
                file,
                "has no column "
                    + UserError.quoted(column.name())
                    + ", which the map names for "
                    + quantity.key()
                    + UserError.ALLOWED
                    + names.stream().map(UserError::quoted).collect(Collectors.joining(", ")));
          }
        });
  }

  private void requireHeight(String file) {
    if (!columns.containsKey(RecordedQuantity.HEIGHT)
        && !columns.containsKey(RecordedQuantity.PRESSURE_ALTITUDE)) {
      throw UserError.file(
          file,
          "has no column for a height: say which it is by "
              + option(RecordedQuantity.HEIGHT)
              + ", or with pressure_altitude in place of height; its header is "
              + UserError.quoted(String.join(", ", names)));
    }
  }
}
