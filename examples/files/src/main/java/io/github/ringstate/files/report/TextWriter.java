package io.github.ringstate.files.report;

import io.github.ringstate.files.text.Wrapping;
import io.github.ringstate.files.unit.UnitSystem;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Writes the sheet of a report as plain text, at most {@link #WIDTH} columns wide.
 *
 * @param units the units to speak in
 */
public record TextWriter(UnitSystem units) implements CharacterWriter {

  /** Columns of the page. */
  static final int WIDTH = 100;

  private static final String MARGIN = "  ";
  private static final String GAP = "  ";
  private static final String NARROW_GAP = " ";

  @Override
  public void write(Report report, Writer out) throws IOException {
    boolean first = true;
    for (Sheet.Block block : report.sheet(units).blocks()) {
      if (!first) {
        out.write("\n");
      }
      first = false;
      for (String line : lines(block)) {
        out.write(line.stripTrailing());
        out.write("\n");
      }
    }
    out.flush();
  }

  private static List<String> lines(Sheet.Block block) {
    if (block instanceof Sheet.Title title) {
      return List.of(title.text(), "=".repeat(title.text().length()));
    }
    if (block instanceof Sheet.Heading heading) {
      return List.of(heading.text(), "-".repeat(heading.text().length()));
    }
    if (block instanceof Sheet.Paragraph paragraph) {
      return Wrapping.lines(paragraph.text(), WIDTH);
    }
    if (block instanceof Sheet.Terms terms) {
      return terms(terms.terms());
    }
    if (block instanceof Sheet.Grid grid) {
      return grid(grid);
    }
    return ((Sheet.Verbatim) block).lines();
  }

  private static List<String> terms(List<Term> terms) {
    int left = terms.stream().mapToInt(term -> term.word().length()).max().orElse(0);
    String indent = MARGIN + " ".repeat(left) + GAP;
    List<String> lines = new ArrayList<>();
    for (Term term : terms) {
      String start = MARGIN + padded(term.word(), left, true) + GAP;
      for (String line : Wrapping.lines(term.meaning(), WIDTH - indent.length())) {
        lines.add(start + line);
        start = indent;
      }
    }
    return lines;
  }

  private static List<String> grid(Sheet.Grid grid) {
    int columns = grid.columns().size();
    int[] widths = new int[columns];
    int heads = 0;
    for (int i = 0; i < columns; i++) {
      Sheet.GridColumn column = grid.columns().get(i);
      heads = Math.max(heads, column.head().size());
      for (String head : column.head()) {
        widths[i] = Math.max(widths[i], head.length());
      }
      for (List<String> row : grid.rows()) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    int full = MARGIN.length() + IntStream.of(widths).sum() + (columns - 1) * GAP.length();
    String gap = full <= WIDTH ? GAP : NARROW_GAP;
    List<String> lines = new ArrayList<>();
    for (int h = 0; h < heads; h++) {
      List<String> texts = new ArrayList<>();
      for (Sheet.GridColumn column : grid.columns()) {
        texts.add(h < column.head().size() ? column.head().get(h) : "");
      }
      lines.add(row(grid, widths, gap, texts));
    }
    List<String> rule = new ArrayList<>();
    for (int width : widths) {
      rule.add("-".repeat(width));
    }
    lines.add(row(grid, widths, gap, rule));
    for (List<String> row : grid.rows()) {
      lines.add(row(grid, widths, gap, row));
    }
    return lines;
  }

  private static String row(Sheet.Grid grid, int[] widths, String gap, List<String> texts) {
    StringBuilder line = new StringBuilder(MARGIN);
    for (int i = 0; i < widths.length; i++) {
      line.append(i == 0 ? "" : gap)
          .append(padded(texts.get(i), widths[i], grid.columns().get(i).left()));
    }
    return line.toString();
  }

  private static String padded(String text, int width, boolean left) {
    String blanks = " ".repeat(Math.max(0, width - text.length()));
    return left ? text + blanks : blanks + text;
  }
}
