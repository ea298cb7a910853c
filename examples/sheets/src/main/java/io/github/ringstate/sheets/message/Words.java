package io.github.ringstate.sheets.message;

import java.util.List;
import java.util.Locale;

/** What English does with words in a row. */
public final class Words {

  private Words() {}

  /**
   * Some words in a row.
   *
   * @param parts the words; at least one
   * @return the words with commas and an "and"
   */
  public static String and(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /**
   * The first letter as it begins a sentence.
   *
   * @param text the text; not empty
   * @return the text with a capital letter
   */
  public static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /**
   * The first letter as it stands within a sentence.
   *
   * @param text the text; not empty
   * @return the text with a small letter
   */
  public static String small(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }
}
