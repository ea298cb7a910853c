package io.github.ringstate.study.sweep;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Some rows of a sweep that follow each other, column by column. */
public final class Rows {

  private final List<Column> columns;
  private final int size;
  private final long[][] integers;
  private final double[][] numbers;
  private final @Nullable String[][] words;
  private int failed;

  Rows(List<Column> columns, int size) {
    this.columns = columns;
    this.size = size;
    integers = new long[columns.size()][];
    numbers = new double[columns.size()][];
    words = new String[columns.size()][];
    for (int i = 0; i < columns.size(); i++) {
      switch (columns.get(i).type()) {
        case INTEGER -> integers[i] = new long[size];
        case NUMBER -> numbers[i] = new double[size];
        case WORD -> words[i] = new String[size];
      }
    }
  }

  /**
   * Rows of one's own, for whoever writes rows.
   *
   * @param columns the columns
   * @param rows for each row its values in order: a Long, a Double or a String, as the column has
   *     it
   * @return the rows
   */
  public static Rows of(List<Column> columns, List<List<Object>> rows) {
    Rows made = new Rows(List.copyOf(columns), rows.size());
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < columns.size(); column++) {
        Object value = rows.get(row).get(column);
        switch (columns.get(column).type()) {
          case INTEGER -> made.set(column, row, (long) (Long) value);
          case NUMBER -> made.set(column, row, (double) (Double) value);
          case WORD -> made.set(column, row, (String) value);
        }
      }
    }
    return made;
  }

  /**
   * The columns.
   *
   * @return the columns, in order
   */
  public List<Column> columns() {
    return columns;
  }

  /**
   * How many rows there are.
   *
   * @return the number
   */
  public int size() {
    return size;
  }

  /**
   * How many of the rows could not be flown.
   *
   * @return the number of rows with a reason in their last column
   */
  public int failed() {
    return failed;
  }

  /**
   * A whole number.
   *
   * @param column the number of a column of type {@link Column.Type#INTEGER}
   * @param row the row, from 0
   * @return the value
   */
  public long integer(int column, int row) {
    return integers[column][row];
  }

  /**
   * A number.
   *
   * @param column the number of a column of type {@link Column.Type#NUMBER}
   * @param row the row, from 0
   * @return the value, in the column's unit; NaN if the row has none
   */
  public double number(int column, int row) {
    return numbers[column][row];
  }

  /**
   * A word.
   *
   * @param column the number of a column of type {@link Column.Type#WORD}
   * @param row the row, from 0
   * @return the value; null if the row has none
   */
  public @Nullable String word(int column, int row) {
    return words[column][row];
  }

  void set(int column, int row, long value) {
    integers[column][row] = value;
  }

  void set(int column, int row, double value) {
    numbers[column][row] = value;
  }

  void set(int column, int row, @Nullable String value) {
    words[column][row] = value;
  }

  void countFailed() {
    failed++;
  }
}
