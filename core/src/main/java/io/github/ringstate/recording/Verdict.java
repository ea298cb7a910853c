package io.github.ringstate.recording;

/** What a descent in a recording was. */
public enum Verdict {
  /** The descent was inside the ring state, beyond what the errors of the data can explain. */
  RING_STATE("ring state"),
  /** The descent touched the boundary; the errors of the data leave open whether it was inside. */
  AT_THE_BOUNDARY("at the boundary"),
  /** A fast, slow-flown descent with all the power there is, outside the ring state. */
  POWER_ONLY("power only"),
  /** The ring state was entered and the recording ends, or has a gap, before the arrest. */
  NO_END("end not recorded");

  private final String label;

  Verdict(String label) {
    this.label = label;
  }

  /**
   * The verdict in words.
   *
   * @return a few lower-case words
   */
  public String label() {
    return label;
  }
}
