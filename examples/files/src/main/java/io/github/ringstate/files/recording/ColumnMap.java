package io.github.ringstate.files.recording;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.RenamedKeys;
import io.github.ringstate.files.toml.Texts;
import io.github.ringstate.files.toml.TomlDocument;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which column of a CSV file holds which quantity, in which unit. A file whose columns are named
 * {@code time_s}, {@code height_ft} and so on (a quantity's key and a unit's suffix) needs no map;
 * a column {@code time} beside one of those may hold times of day, or dates with times.
 *
 * @param columns the columns by quantity; empty if the names of the columns say it all
 */
public record ColumnMap(Map<RecordedQuantity, Column> columns) {

  /** No map: the names of the columns say what they hold. */
  public static final ColumnMap BY_NAMES = new ColumnMap(Map.of());

  /** The option by which tools take a map, for messages on a file. */
  public static final String OPTION = "--columns";

  private static final int LARGEST = 65_536;
  private static final String COLUMN = "column";
  private static final String UNIT = "unit";

  /**
   * A column.
   *
   * @param name its name in the header
   * @param unit the unit of its values
   */
  public record Column(String name, RecordedUnit unit) {}

  /** Copies the map. */
  public ColumnMap {
    Map<RecordedQuantity, Column> copy = new EnumMap<>(RecordedQuantity.class);
    copy.putAll(columns);
    columns = Collections.unmodifiableMap(copy);
  }

  /**
   * Reads a map from what was given for an option.
   *
   * @param option the option's name, for messages
   * @param given the name of a TOML file (it holds a path separator or ends in .toml), or {@code
   *     QUANTITY=COLUMN:UNIT,...}
   * @param texts where the file's text comes from
   * @return the map
   * @throws UserError if the file cannot be read or anything in the map is wrong
   */
  public static ColumnMap of(String option, String given, Texts texts) {
    if (!given.contains("=") || given.toLowerCase(Locale.ROOT).endsWith(".toml")) {
      return ofToml(given, texts.read(given, "a map of columns", LARGEST));
    }
    Map<RecordedQuantity, Column> columns = new EnumMap<>(RecordedQuantity.class);
    for (String part : given.split(",", -1)) {
      int equals = part.indexOf('=');
      int colon = part.lastIndexOf(':');
      if (equals < 0 || colon < equals) {
        throw UserError.option(option, part, "QUANTITY=COLUMN:UNIT, or the name of a TOML file");
      }
      RecordedQuantity quantity =
          RecordedQuantity.of(part.substring(0, equals).strip())
              .orElseThrow(() -> UserError.option(option, part, "quantities " + quantities()));
      RecordedUnit unit =
          quantity
              .unit(part.substring(colon + 1).strip())
              .orElseThrow(() -> UserError.option(option, part, units(quantity)));
      columns.put(quantity, new Column(part.substring(equals + 1, colon).strip(), unit));
    }
    return new ColumnMap(columns);
  }

  /**
   * Reads a map from TOML: a table for each quantity, with {@code column} and {@code unit}.
   *
   * @param file the file's name, for messages
   * @param text its content
   * @return the map
   * @throws UserError if anything in it is wrong
   */
  static ColumnMap ofToml(String file, String text) {
    TomlDocument document = TomlDocument.parse(file, text, RenamedKeys.NONE);
    Map<RecordedQuantity, Column> columns = new EnumMap<>(RecordedQuantity.class);
    for (String key : document.keys()) {
      RecordedQuantity quantity =
          RecordedQuantity.of(key).orElseThrow(() -> document.unknown(List.of(key), quantities()));
      if (!document.isTable(key)) {
        throw document.bad(List.of(key), "a table, [" + key + "], with column and unit");
      }
      document.onlyKeys(List.of(key), List.of(COLUMN, UNIT));
      JsonNode name = document.get(List.of(key, COLUMN), "the name of a column");
      if (!name.isTextual()) {
        throw document.bad(List.of(key, COLUMN), "the name of a column, in quotation marks");
      }
      JsonNode unit = document.get(List.of(key, UNIT), units(quantity));
      columns.put(
          quantity,
          new Column(
              name.textValue().strip(),
              quantity
                  .unit(unit.asText())
                  .orElseThrow(() -> document.bad(List.of(key, UNIT), units(quantity)))));
    }
    return new ColumnMap(columns);
  }

  /** The columns of a header that hold something, by quantity. */
  Map<RecordedQuantity, Column> in(List<String> header) {
    if (!columns.isEmpty()) {
      return columns;
    }
    Map<RecordedQuantity, Column> found = new EnumMap<>(RecordedQuantity.class);
    for (RecordedQuantity quantity : RecordedQuantity.values()) {
      for (RecordedUnit unit : quantity.units()) {
        String named = quantity.key() + "_" + unit.suffix();
        header.stream()
            .filter(named::equalsIgnoreCase)
            .findFirst()
            .ifPresent(name -> found.putIfAbsent(quantity, new Column(name, unit)));
      }
    }
    if (!found.isEmpty()) { // a name without a unit says enough of a time of day
      header.stream()
          .filter(RecordedQuantity.TIME.key()::equalsIgnoreCase)
          .findFirst()
          .ifPresent(
              name ->
                  found.putIfAbsent(
                      RecordedQuantity.TIME, new Column(name, RecordedUnit.TIME_OF_DAY)));
    }
    return found;
  }

  /**
   * The map as an option takes it.
   *
   * @return {@code QUANTITY=COLUMN:UNIT,...}; empty if the map is
   */
  public String given() {
    return columns.entrySet().stream()
        .map(
            entry ->
                entry.getKey().key()
                    + "="
                    + entry.getValue().name()
                    + ":"
                    + entry.getValue().unit().key())
        .collect(Collectors.joining(","));
  }

  /** The units of a quantity, for messages. */
  static String units(RecordedQuantity quantity) {
    return "units of "
        + quantity.key()
        + ": "
        + quantity.units().stream().map(RecordedUnit::key).collect(Collectors.joining(", "));
  }

  private static String quantities() {
    return Stream.of(RecordedQuantity.values())
        .map(RecordedQuantity::key)
        .collect(Collectors.joining(", "));
  }
}
