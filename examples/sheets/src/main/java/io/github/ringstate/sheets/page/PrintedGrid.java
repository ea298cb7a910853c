package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.Sheet;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of the text as {@code grid.mustache} prints it, so that text and sheet show the same
 * numbers.
 *
 * @param heads the heads of the columns
 * @param rows the lines
 */
public record PrintedGrid(List<Sheet.GridColumn> heads, List<Row> rows) {

  /** Copies the lists. */
  public PrintedGrid {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  /**
   * A line.
   *
   * @param begins whether it begins a group: its first field says of what
   * @param fields its fields
   */
  public record Row(boolean begins, List<Field> fields) {

    /** Copies the fields. */
    public Row {
      fields = List.copyOf(fields);
    }
  }

  /**
   * A field.
   *
   * @param text what it says
   * @param left whether it stands on the left
   * @param first whether it is the first of its line
   */
  public record Field(String text, boolean left, boolean first) {}

  /**
   * Makes a table of the text ready for print.
   *
   * @param grid the table
   * @return the same texts
   */
  public static PrintedGrid of(Sheet.Grid grid) {
    List<Row> rows = new ArrayList<>();
    for (List<String> line : grid.rows()) {
      List<Field> fields = new ArrayList<>();
      for (int i = 0; i < line.size(); i++) {
        fields.add(new Field(line.get(i), grid.columns().get(i).left(), i == 0));
      }
      rows.add(new Row(!line.get(0).isEmpty(), fields));
    }
    return new PrintedGrid(grid.columns(), rows);
  }
}
