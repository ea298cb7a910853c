package io.github.ringstate.validation.check;

/** How the number that a check expects came into this project. */
public enum Obtained {
  /** Read in the source, or in a text that quotes it. */
  PRINTED("printed"),
  /** Read in another's copy of the source, and held against the source's own equations. */
  TRANSCRIBED("transcribed by others, tested"),
  /** Worked out from a formula that stands in any textbook, or by a second method. */
  COMPUTED("computed from the formula"),
  /** Number or formula written down from memory of the source. */
  FROM_MEMORY("from memory");

  private final String label;

  Obtained(String label) {
    this.label = label;
  }

  /**
   * The mark as a person reads it.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }
}
