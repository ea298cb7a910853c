package io.github.ringstate.study.sweep;

import io.github.ringstate.quantity.Quantity;
import java.util.List;
import java.util.Map;

/**
 * One thing that a sweep may set: a number with a unit and a range, or one of some words.
 *
 * @param key group, point, name with the unit as its last part, for instance {@code craft.mass_kg}
 * @param words the words that it takes; empty for a number
 * @param ranges for a number its range, for each entry or technique that has it; under the empty
 *     text where it depends on neither; empty for words
 */
public record Setting(String key, List<String> words, Map<String, Quantity> ranges) {

  /** Copies the lists. */
  public Setting {
    words = List.copyOf(words);
    ranges = Map.copyOf(ranges);
  }

  static Setting word(String key, List<String> words) {
    return new Setting(key, words, Map.of());
  }

  static Setting number(String key, Quantity range) {
    return new Setting(key, List.of(), Map.of("", range));
  }

  /**
   * Whether the setting takes a word.
   *
   * @return false if it takes a number
   */
  public boolean takesWords() {
    return !words.isEmpty();
  }

  /**
   * The group of the setting.
   *
   * @return what stands before the point of the key
   */
  public String group() {
    return group(key);
  }

  /** The group of a key. */
  static String group(String key) {
    return key.substring(0, key.indexOf('.'));
  }

  /**
   * The name within the group.
   *
   * @return what stands behind the point of the key
   */
  public String name() {
    return key.substring(key.indexOf('.') + 1);
  }

  /** Checks a word. */
  void check(String word) {
    if (!words.contains(word)) {
      throw SettingException.cannotBe(
          key, word, takesWords() ? String.join(", ", words) : "a number");
    }
  }

  /** Checks a number for all whom it concerns. */
  void check(double value, List<String> kinds) {
    if (takesWords()) {
      throw SettingException.cannotBe(key, value, String.join(", ", words));
    }
    ranges.forEach(
        (kind, range) -> {
          boolean concerned = kind.isEmpty() || kinds.contains(kind);
          if (concerned && !(value >= range.low() && value <= range.high())) {
            throw SettingException.cannotBe(
                key,
                value,
                SettingException.range(range) + (kind.isEmpty() ? "" : " with " + kind));
          }
        });
  }
}
