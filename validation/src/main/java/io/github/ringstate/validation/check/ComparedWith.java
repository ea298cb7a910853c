package io.github.ringstate.validation.check;

/** What a check compares the library with. */
public enum ComparedWith {
  /** A value that a named source prints or states. */
  PUBLISHED_VALUE("published value"),
  /** A value that follows from an equation without the library's code. */
  CLOSED_FORM("closed form"),
  /** The same question answered by another method, mostly another library. */
  SECOND_METHOD("second method"),
  /** What the trade says or does, or what the model is required to do, without a source for it. */
  COMMON_PRACTICE("common practice, no source");

  private final String label;

  ComparedWith(String label) {
    this.label = label;
  }

  /**
   * The kind as a person reads it.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }
}
