package io.github.ringstate.study.sweep;

import java.util.List;

/**
 * A column of a sweep's rows.
 *
 * @param name lower case with underscores, the unit last
 * @param type what it holds
 * @param words for words the ones that it may hold, if they are known; empty if it may hold any
 */
public record Column(String name, Type type, List<String> words) {

  /** What a column holds. */
  public enum Type {
    /** Whole numbers; every row has one. */
    INTEGER,
    /** Numbers; NaN where a row has none. */
    NUMBER,
    /** Words or a sentence; null where a row has none. */
    WORD
  }

  /** Copies the list. */
  public Column {
    words = List.copyOf(words);
  }

  /**
   * A column that may hold anything of its type.
   *
   * @param name lower case with underscores, the unit last
   * @param type what it holds
   */
  public Column(String name, Type type) {
    this(name, type, List.of());
  }
}
