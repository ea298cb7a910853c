package io.github.ringstate.study.sweep;

/**
 * A column of a sweep's rows.
 *
 * @param name lower case with underscores, the unit last
 * @param type what it holds
 */
public record Column(String name, Type type) {

  /** What a column holds. */
  public enum Type {
    /** Whole numbers; every row has one. */
    INTEGER,
    /** Numbers; NaN where a row has none. */
    NUMBER,
    /** Words or a sentence; null where a row has none. */
    WORD
  }
}
