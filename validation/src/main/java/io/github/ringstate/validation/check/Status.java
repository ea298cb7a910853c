package io.github.ringstate.validation.check;

/** How a check came out, the worst first. */
public enum Status {
  /** The library is outside the tolerance, and nothing explains it. */
  FAILED("failed", "false"),
  /** The library is outside the tolerance by the amount that an explanation says. */
  KNOWN_DIFFERENCE("known difference", "known difference"),
  /** The library is within the tolerance. */
  PASSED("passed", "true");

  private final String label;
  private final String key;

  Status(String label, String key) {
    this.label = label;
    this.key = key;
  }

  /**
   * The status as a person reads it.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * The status in the column {@code passed} of a file.
   *
   * @return {@code true}, {@code false} or {@code known difference}
   */
  public String key() {
    return key;
  }
}
