package io.github.ringstate.files.report;

import io.github.ringstate.files.unit.UnitSystem;
import java.util.List;
import java.util.Map;

/** What a command has to say, for people and for machines. A writer asks for the part it prints. */
public interface Report {

  /**
   * The report laid out for people.
   *
   * @param units the units to speak in
   * @return the sheet
   */
  Sheet sheet(UnitSystem units);

  /**
   * The table that a CSV file holds.
   *
   * @return the table
   */
  Table<?> table();

  /**
   * The report's name.
   *
   * @return a few lower-case words
   */
  String title();

  /**
   * What belongs to the report as a whole.
   *
   * @return fields by name, the unit last in the name, in the order to print them
   */
  Map<String, Cell> facts();

  /**
   * The names in the report's tables and facts, explained where they need it.
   *
   * @return the names with what they mean
   */
  List<Term> definitions();

  /**
   * All tables of the report, the main one last; it may have more columns than {@link #table}.
   *
   * @return the tables by name, in the order to print them
   */
  Map<String, Table<?>> tables();

  /**
   * All that the report was computed with, for its provenance: craft, air, entry, model and the
   * like, every number that was given or not.
   *
   * @return values by keys with their unit; none for a report that was not computed
   */
  default Map<String, Cell> settings() {
    return Map.of();
  }
}
