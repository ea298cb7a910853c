package io.github.ringstate.files.report;

import io.github.ringstate.files.report.Sheet.GridColumn;
import java.util.List;
import java.util.function.Function;

/**
 * A column of a table for people, with what stands in it.
 *
 * @param head its head and alignment
 * @param text the text of a row
 * @param <R> a row
 */
public record TextColumn<R>(GridColumn head, Function<R, String> text) {

  /**
   * A column of numbers.
   *
   * @param text the text of a row
   * @param head the lines of its head
   * @param <R> a row
   * @return the column
   */
  public static <R> TextColumn<R> right(Function<R, String> text, String... head) {
    return new TextColumn<>(GridColumn.right(head), text);
  }

  /**
   * A column of words.
   *
   * @param text the text of a row
   * @param head the lines of its head
   * @param <R> a row
   * @return the column
   */
  public static <R> TextColumn<R> left(Function<R, String> text, String... head) {
    return new TextColumn<>(GridColumn.left(head), text);
  }

  /**
   * A table of such columns.
   *
   * @param columns the columns
   * @param rows the rows
   * @param <R> a row
   * @return the table
   */
  public static <R> Sheet.Grid grid(List<TextColumn<R>> columns, List<R> rows) {
    return new Sheet.Grid(
        columns.stream().map(TextColumn::head).toList(),
        rows.stream()
            .map(row -> columns.stream().map(column -> column.text().apply(row)).toList())
            .toList());
  }
}
