package io.github.ringstate.study.sweep;

import java.util.Map;
import java.util.OptionalInt;

/**
 * One point of a sweep, before it is flown.
 *
 * @param index its place in the sweep, from 0
 * @param numbers the numbers that are set, by the key of their setting and in its unit
 * @param words the words that are set, by the key of their setting
 * @param pilot the number of the pilot, from 0; empty if no pilots are drawn
 */
public record Point(
    long index, Map<String, Double> numbers, Map<String, String> words, OptionalInt pilot) {

  /** Copies the maps. */
  public Point {
    numbers = Map.copyOf(numbers);
    words = Map.copyOf(words);
  }
}
