package io.github.ringstate.files.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A report laid out for people, without regard to the paper: writers decide on widths and fonts.
 *
 * @param blocks what stands on the sheet, from top to bottom
 */
public record Sheet(List<Block> blocks) {

  /** Copies the blocks. */
  public Sheet {
    blocks = List.copyOf(blocks);
  }

  /** A part of a sheet. */
  public sealed interface Block permits Title, Heading, Paragraph, Terms, Grid, Verbatim {}

  /**
   * The title of the sheet.
   *
   * @param text one line
   */
  public record Title(String text) implements Block {}

  /**
   * The heading of a part.
   *
   * @param text one line
   */
  public record Heading(String text) implements Block {}

  /**
   * Running text.
   *
   * @param text one paragraph
   */
  public record Paragraph(String text) implements Block {}

  /**
   * Words on the left, what they stand for on the right.
   *
   * @param terms the words, in order
   */
  public record Terms(List<Term> terms) implements Block {

    /** Copies the words. */
    public Terms {
      terms = List.copyOf(terms);
    }
  }

  /**
   * A table.
   *
   * @param columns heads and alignment; a head may have several lines
   * @param rows one text for each column
   */
  public record Grid(List<GridColumn> columns, List<List<String>> rows) implements Block {

    /** Copies the rows. */
    public Grid {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
    }

    /**
     * A line that says what the lines below it are.
     *
     * @param column in which column it stands, from 0
     * @param text what it says
     * @param columns how many columns there are
     * @return a text for each column, all empty but one
     */
    public static List<String> heading(int column, String text, int columns) {
      List<String> line = new ArrayList<>(Collections.nCopies(columns, ""));
      line.set(column, text + ":");
      return line;
    }
  }

  /**
   * A column of a table.
   *
   * @param head the lines of its head, from top to bottom
   * @param left whether the texts stand on the left; numbers stand on the right
   */
  public record GridColumn(List<String> head, boolean left) {

    /** Copies the head. */
    public GridColumn {
      head = List.copyOf(head);
    }

    /**
     * A column of numbers.
     *
     * @param head the lines of its head
     * @return the column
     */
    public static GridColumn right(String... head) {
      return new GridColumn(List.of(head), false);
    }

    /**
     * A column of words.
     *
     * @param head the lines of its head
     * @return the column
     */
    public static GridColumn left(String... head) {
      return new GridColumn(List.of(head), true);
    }
  }

  /**
   * Lines to be kept as they are.
   *
   * @param lines the lines
   */
  public record Verbatim(List<String> lines) implements Block {

    /** Copies the lines. */
    public Verbatim {
      lines = List.copyOf(lines);
    }
  }
}
