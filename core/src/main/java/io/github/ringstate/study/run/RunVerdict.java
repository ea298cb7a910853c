package io.github.ringstate.study.run;

/** What is said of a run on a track: never that it is safe. */
public enum RunVerdict {
  /** The run keeps its margins as planned, in a turn downwind too. */
  FLY("fly"),
  /** It keeps them as planned as long as the least airspeed is kept, in turns too. */
  FLY_WITH_A_LIMIT("fly with a limit"),
  /** At the ground speed planned it does not keep them; at another it would. */
  NOT_AS_PLANNED("not as planned"),
  /** It does not keep them. */
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
