package io.github.ringstate.files.toml;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the statements of a TOML document begin and end (TOML 1.0.0: comment, string, array). A
 * statement ends with the line, unless a text or an array goes on. Lines without one are left out.
 */
final class Statements {

  /**
   * A statement.
   *
   * @param start where it begins in the document, from 0
   * @param line its first line, from 1
   * @param text all its lines
   */
  record Statement(int start, int line, String text) {}

  private static final String BASIC = "\"\"\"";
  private static final String LITERAL = "'''";

  private final String text;
  private final List<Statement> found = new ArrayList<>();
  private int at;
  private int line = 1;

  private Statements(String text) {
    this.text = text;
  }

  /** The statements of a document, from top to bottom; the last may not be whole. */
  static List<Statement> of(String text) {
    Statements statements = new Statements(text);
    while (statements.at < text.length()) {
      statements.next();
    }
    return statements.found;
  }

  private void next() {
    int first = line;
    int start = at;
    int depth = 0;
    boolean empty = true;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '\n' && depth == 0) {
        break;
      }
      if (c == '#') {
        skipTo('\n');
        continue;
      }
      empty &= Character.isWhitespace(c);
      if (c == '"' || c == '\'') {
        string(c);
        continue;
      }
      if (c == '[') {
        depth++;
      } else if (c == ']') {
        depth = Math.max(0, depth - 1);
      }
      step();
    }
    if (!empty) {
      found.add(new Statement(start, first, text.substring(start, at)));
    }
    step();
  }

  private void string(char quote) {
    String fence = quote == '"' ? BASIC : LITERAL;
    boolean tall = text.startsWith(fence, at);
    at += tall ? fence.length() : 1;
    while (at < text.length()) {
      if (tall && text.startsWith(fence, at)) {
        // up to two quotation marks may stand right before the three that end the text
        do {
          at++;
        } while (text.startsWith(fence, at));
        at += fence.length() - 1;
        return;
      }
      char c = text.charAt(at);
      if (!tall && (c == quote || c == '\n')) {
        at += c == quote ? 1 : 0;
        return;
      }
      if (c == '\\' && quote == '"') {
        step();
      }
      step();
    }
  }

  private void skipTo(char end) {
    int there = text.indexOf(end, at);
    at = there < 0 ? text.length() : there;
  }

  private void step() {
    if (at < text.length()) {
      line += text.charAt(at) == '\n' ? 1 : 0;
      at++;
    }
  }
}
