package io.github.ringstate.files.toml;

import io.github.ringstate.files.text.Wrapping;
import java.util.List;

/** What files are made of that the tool writes as TOML. */
public final class TomlLines {

  /** What begins a comment. */
  public static final String COMMENT = "# ";

  private static final int WIDTH = 80;

  private TomlLines() {}

  /**
   * Adds running text as a comment.
   *
   * @param lines the lines so far
   * @param text the text, in one line
   */
  public static void comment(List<String> lines, String text) {
    for (String line : Wrapping.lines(text, WIDTH - COMMENT.length())) {
      lines.add(COMMENT + line);
    }
  }

  /**
   * A basic string.
   *
   * @param text a text without control characters, which the readers refuse
   * @return the text in quotation marks
   */
  public static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
