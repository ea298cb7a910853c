package io.github.ringstate.study.sweep;

import java.io.Serializable;
import java.util.HashSet;
import java.util.List;

/** What a setting goes through in a sweep: an axis of the grid. */
public sealed interface Axis extends Serializable permits Axis.Numbers, Axis.Range, Axis.Words {

  /** The most values that an axis may have. */
  int MOST_VALUES = 1_000_000;

  /**
   * What is set.
   *
   * @return the key of a {@link Setting}
   */
  String key();

  /**
   * How many values there are.
   *
   * @return at least 1
   */
  int size();

  /**
   * Some numbers.
   *
   * @param key the setting
   * @param values the numbers, in the unit of the setting and in the order flown; no two equal
   */
  record Numbers(String key, List<Double> values) implements Axis {

    /** Checks that there are values and no two are equal. */
    public Numbers {
      values = values.stream().map(value -> value + 0.0).toList(); // zero has no sign here
      checkList(key, values);
    }

    @Override
    public int size() {
      return values.size();
    }
  }

  /**
   * Numbers from one end to the other, both included.
   *
   * @param key the setting
   * @param from the first number, in the unit of the setting
   * @param to the last number
   * @param values how many there are, at least 2
   * @param scale how they lie between the ends
   */
  record Range(String key, double from, double to, int values, Scale scale) implements Axis {

    /** Checks the ends and the number of values. */
    public Range {
      scale.check(key, from, to);
      if (values < 2 || values > MOST_VALUES) {
        throw new SettingException(
            key, "has " + values + " values", "2 to " + MOST_VALUES + " values");
      }
    }

    @Override
    public int size() {
      return values;
    }

    /**
     * One of the numbers.
     *
     * @param place which one, from 0
     * @return the number, in the unit of the setting; the ends exactly
     */
    public double value(int place) {
      return scale.at(from, to, (double) place / (values - 1));
    }
  }

  /**
   * Some words.
   *
   * @param key the setting
   * @param words the words, in the order flown; no two equal
   */
  record Words(String key, List<String> words) implements Axis {

    /** Checks that there are words and no two are equal. */
    public Words {
      words = List.copyOf(words);
      checkList(key, words);
    }

    @Override
    public int size() {
      return words.size();
    }
  }

  private static void checkList(String key, List<?> values) {
    if (values.isEmpty()) {
      throw new SettingException(key, "has no value", "at least one");
    }
    if (values.size() > MOST_VALUES) {
      throw new SettingException(key, "has " + values.size() + " values", "at most " + MOST_VALUES);
    }
    HashSet<Object> seen = new HashSet<>();
    for (Object value : values) {
      if (!seen.add(value)) {
        throw new SettingException(key, "has the value '" + value + "' twice", "each value once");
      }
    }
  }
}
