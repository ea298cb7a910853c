package io.github.ringstate.files.recording;

/**
 * The lines of a CSV file of which none swallows the rest. A quotation mark that is never closed
 * would turn all that follows into one cell (RFC 4180, rule 6); no cell of a recording is longer
 * than some lines, so that such a line is a broken one and is left out.
 */
final class CsvText {

  /** A cell in quotation marks may go on over so many lines. */
  private static final int LINES = 10;

  private final String text;
  private final StringBuilder kept = new StringBuilder();
  private int leftOut;

  private CsvText(String text) {
    this.text = text;
  }

  /** Goes through a text. */
  static CsvText of(String text) {
    CsvText lines = new CsvText(text);
    lines.read();
    return lines;
  }

  private void read() {
    int at = 0;
    while (at < text.length()) {
      int end = endOfLine(at);
      int lines = 1;
      boolean open = isOdd(at, end);
      int last = end;
      while (open && lines < LINES && last < text.length()) {
        int next = endOfLine(last);
        open ^= isOdd(last, next);
        last = next;
        lines++;
      }
      if (open) {
        leftOut++;
        at = end;
      } else {
        kept.append(text, at, last);
        at = last;
      }
    }
  }

  private int endOfLine(int from) {
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        return i + 1;
      }
      if (c == '\r') {
        return i + 1 < text.length() && text.charAt(i + 1) == '\n' ? i + 2 : i + 1;
      }
    }
    return text.length();
  }

  private boolean isOdd(int from, int to) {
    boolean odd = false;
    for (int i = from; i < to; i++) {
      odd ^= text.charAt(i) == '"';
    }
    return odd;
  }

  /** The text without broken lines. */
  String kept() {
    return kept.toString();
  }

  /** How many lines were left out. */
  int leftOut() {
    return leftOut;
  }
}
