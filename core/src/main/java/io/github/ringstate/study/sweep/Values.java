package io.github.ringstate.study.sweep;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** The values of a point, each in the slot of its setting; written over from point to point. */
final class Values {

  private final List<String> keys;
  private final double[] numbers;
  private final @Nullable String[] words;
  private int pilot = -1;

  Values(List<String> keys) {
    this.keys = keys;
    numbers = new double[keys.size()];
    words = new String[keys.size()];
    Arrays.fill(numbers, Double.NaN);
  }

  /** The slot of a key, or -1 if the sweep does not set it. */
  int slot(String key) {
    return keys.indexOf(key);
  }

  void set(int slot, double number) {
    numbers[slot] = number;
  }

  void set(int slot, String word) {
    words[slot] = word;
  }

  void setPilot(int number) {
    pilot = number;
  }

  double number(int slot) {
    return numbers[slot];
  }

  @Nullable String word(int slot) {
    return words[slot];
  }

  /** The number of the pilot, -1 if none is drawn. */
  int pilot() {
    return pilot;
  }

  OptionalDouble number(String key) {
    int slot = slot(key);
    return slot < 0 ? OptionalDouble.empty() : OptionalDouble.of(numbers[slot]);
  }

  String word(String key, String standard) {
    int slot = slot(key);
    String word = slot < 0 ? null : words[slot];
    return word == null ? standard : word;
  }
}
