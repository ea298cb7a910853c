package io.github.ringstate.encounter;

/** How an encounter ended. */
public enum Ending {
  /** The descent was arrested above the ground, for good. */
  ARRESTED("arrested"),
  /** The craft reached the ground first. */
  GROUND("ground"),
  /**
   * The descent went on until the time ran out, or until the rotor had slowed to half of its
   * nominal speed, where the model ends.
   */
  NOT_ARRESTED("not-arrested"),
  /**
   * The descent was arrested, but not for good: it went on soon afterwards, or the rotor's speed
   * was outside its limits.
   */
  ARREST_NOT_LASTING("arrest-not-lasting"),
  /** An event of the user's own ended the flight before it was arrested for good. */
  STOPPED("stopped"),
  /** The ring state was never entered. */
  NO_ONSET("no-onset");

  private final String label;

  Ending(String label) {
    this.label = label;
  }

  /**
   * The ending in words.
   *
   * @return lower case, with hyphens
   */
  public String label() {
    return label;
  }
}
