package io.github.ringstate.files.recording;

/** Decimal numbers as instruments write them; nothing else that Java calls a number. */
final class Numerals {

  private static final int LONGEST = 40;

  private Numerals() {}

  /** The number that a text is; NaN if it is none. */
  static double number(String text) {
    String bare = text.strip();
    if (bare.isEmpty() || bare.length() > LONGEST) {
      return Double.NaN;
    }
    for (int i = 0; i < bare.length(); i++) {
      char c = bare.charAt(i);
      boolean exponent = (c == 'e' || c == 'E') && i > 0;
      if (!(c >= '0' && c <= '9') && c != '.' && c != '-' && c != '+' && !exponent) {
        return Double.NaN;
      }
    }
    try {
      double value = Double.parseDouble(bare);
      return Double.isInfinite(value) ? Double.NaN : value;
    } catch (NumberFormatException none) {
      return Double.NaN;
    }
  }
}
