package io.github.ringstate.validation.check;

/** What a check can prove. */
public enum CheckKind {
  /** The library solves its equations right: a formula, a second method, another library. */
  VERIFICATION("verification"),
  /** The library still gives what some of its numbers were chosen to give. */
  CALIBRATION("calibration"),
  /** Its equations are the right ones: measured or stated by others, and nothing fitted to it. */
  VALIDATION("validation");

  private final String label;

  CheckKind(String label) {
    this.label = label;
  }

  /**
   * The kind as a person reads it, and in the column {@code kind} of a file.
   *
   * @return lower case, one word
   */
  public String label() {
    return label;
  }
}
