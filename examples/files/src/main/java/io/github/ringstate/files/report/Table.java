package io.github.ringstate.files.report;

import java.util.List;
import java.util.stream.Stream;

/**
 * A table for machines: named columns over rows of one kind.
 *
 * @param columns the columns
 * @param rows the rows
 * @param <R> a row
 */
public record Table<R>(List<Column<R>> columns, List<R> rows) {

  /** Copies the lists. */
  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * The names of the columns.
   *
   * @return the names, in order
   */
  public List<String> header() {
    return columns.stream().map(Column::name).toList();
  }

  /**
   * The rows as fields.
   *
   * @return one list of fields, in the order of the columns, for each row
   */
  public Stream<List<Cell>> records() {
    return rows.stream()
        .map(row -> columns.stream().map(column -> column.value().apply(row)).toList());
  }

  /**
   * The same rows with more columns behind.
   *
   * @param more the columns to add
   * @return the wider table
   */
  public Table<R> with(List<Column<R>> more) {
    return new Table<>(Stream.concat(columns.stream(), more.stream()).toList(), rows);
  }
}
