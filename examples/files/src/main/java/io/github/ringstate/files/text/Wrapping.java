package io.github.ringstate.files.text;

import java.util.ArrayList;
import java.util.List;

/** Breaks running text into lines at its blanks; a word longer than a line is cut. */
public final class Wrapping {

  private Wrapping() {}

  /**
   * Breaks a paragraph.
   *
   * @param text the paragraph
   * @param width the most characters on a line, positive
   * @return at least one line
   */
  public static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+", -1)) {
      String rest = word;
      if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        lines.add(rest.substring(0, width));
        rest = rest.substring(width);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }
}
