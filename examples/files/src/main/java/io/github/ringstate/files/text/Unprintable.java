package io.github.ringstate.files.text;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * Characters that must not reach a terminal, a page or a printed sheet: controls, line and
 * paragraph separators, marks that turn the direction of the text around them, halves of surrogate
 * pairs and what the Unicode Standard calls noncharacters (chapter 23 of the Unicode Standard 15.0
 * has all of them but the controls' own, which are those of ISO 6429).
 */
public final class Unprintable {

  private static final int LINE_SEPARATOR = 0x2028;
  private static final int PARAGRAPH_SEPARATOR = 0x2029;
  private static final int FIRST_EMBEDDING = 0x202A;
  private static final int LAST_EMBEDDING = 0x202E;
  private static final int FIRST_ISOLATE = 0x2066;
  private static final int LAST_ISOLATE = 0x2069;
  private static final int FIRST_NONCHARACTER = 0xFDD0;
  private static final int LAST_NONCHARACTER = 0xFDEF;
  private static final int PLANE_END = 0xFFFE;

  private Unprintable() {}

  /**
   * The first such character of a text.
   *
   * @param text the text
   * @return its code point, or nothing if the text has none
   */
  public static OptionalInt first(String text) {
    return text.codePoints().filter(Unprintable::is).findFirst();
  }

  /**
   * A text on one line that may be printed.
   *
   * @param text the text
   * @return the text with a question mark for every such character
   */
  public static String replaced(String text) {
    if (first(text).isEmpty()) {
      return text;
    }
    StringBuilder line = new StringBuilder();
    text.codePoints().forEach(c -> line.appendCodePoint(is(c) ? '?' : c));
    return line.toString();
  }

  /**
   * The name of a character.
   *
   * @param codePoint the character
   * @return for instance {@code U+202E}
   */
  public static String name(int codePoint) {
    String digits = Integer.toHexString(codePoint).toUpperCase(Locale.ROOT);
    return "U+" + "0".repeat(Math.max(0, 4 - digits.length())) + digits;
  }

  private static boolean is(int c) {
    return Character.isISOControl(c)
        || c == LINE_SEPARATOR
        || c == PARAGRAPH_SEPARATOR
        || (c >= FIRST_EMBEDDING && c <= LAST_EMBEDDING)
        || (c >= FIRST_ISOLATE && c <= LAST_ISOLATE)
        || (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE)
        || (c >= FIRST_NONCHARACTER && c <= LAST_NONCHARACTER)
        || (c & PLANE_END) == PLANE_END;
  }
}
