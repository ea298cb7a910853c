package io.github.ringstate.files;

import java.util.List;
import java.util.SplittableRandom;

/** What goes wrong with a text on its way: some characters cut, doubled, swapped or put in. */
public final class Mutation {

  private static final List<String> PUT_IN =
      List.of(
          "\u0000",
          "\u001b[31m",
          "\u009b",
          "\u2028",
          "\u202e",
          "\ud800",
          "\ufffe",
          "\ufeff",
          "\"",
          "'",
          "\"\"\"",
          "[",
          "]]",
          "{",
          "=",
          "#",
          ".",
          ",",
          "\n",
          "\r",
          "\t",
          "-",
          "1e999",
          "-1e999",
          "nan",
          "inf",
          "1e99999999999",
          "0x",
          "99999999999999999999",
          "true",
          "1979-05-27T07:32:00Z",
          "\\u0000",
          "\u0660",
          "\ud83d\ude81");

  private Mutation() {}

  /**
   * A text with one to four mishaps.
   *
   * @param text the text
   * @param random where they come from
   * @return what is left of it
   */
  public static String of(String text, SplittableRandom random) {
    StringBuilder mutated = new StringBuilder(text);
    int mishaps = 1 + random.nextInt(4);
    for (int i = 0; i < mishaps && mutated.length() > 0; i++) {
      int from = random.nextInt(mutated.length());
      int to =
          Math.min(mutated.length(), from + 1 + random.nextInt(random.nextInt(4) == 0 ? 80 : 4));
      switch (random.nextInt(6)) {
        case 0 -> mutated.delete(from, to);
        case 1 -> mutated.insert(from, mutated.substring(from, to));
        case 2 -> mutated.setCharAt(from, (char) (mutated.charAt(from) ^ 1 << random.nextInt(8)));
        case 3 -> mutated.setLength(from);
        case 4 -> mutated.replace(from, to, putIn(random));
        default -> mutated.insert(from, putIn(random));
      }
    }
    return mutated.toString();
  }

  private static String putIn(SplittableRandom random) {
    return PUT_IN.get(random.nextInt(PUT_IN.size()));
  }
}
