package io.github.ringstate.study.run;

/** What is said of a run on a track: never that it is safe. */
public enum RunVerdict {
  /** The run keeps its margins as planned. */
  FLY("fly"),
  /** It keeps them within a limit of airspeed or ground speed. */
  FLY_WITH_A_LIMIT("fly with a limit"),
  /** It does not. */
  DO_NOT_FLY("do not fly");

  private final String label;

  RunVerdict(String label) {
    this.label = label;
  }

  /**
   * The verdict in words.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }
}
