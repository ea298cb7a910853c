package io.github.ringstate.files.recording;

/** What was left out of a recording, or mended. */
public enum RepairKind {
  /** A line or an element that is not what the format asks for was left out. */
  UNREADABLE("lines or points that cannot be read, left out"),
  /** A sentence whose checksum does not fit was left out. */
  CHECKSUM("sentences with a wrong checksum, left out"),
  /** A reading that the receiver itself calls invalid was left out. */
  NO_FIX("readings without a position fix, left out"),
  /** A reading without a time was left out. */
  NO_TIME("readings without a time, left out"),
  /** A reading whose time is that of another was left out; the first counts. */
  REPEATED("readings with a repeated time, left out"),
  /** A reading whose time does not fit between its neighbours was left out. */
  BACKWARD("readings whose time goes back or jumps, left out"),
  /** Readings that stood in the wrong place were put where their time says. */
  OUT_OF_ORDER("readings out of order, put in order"),
  /** A value that is no number was left out. */
  NOT_A_NUMBER("values that are no number, left out"),
  /** A value that no helicopter reaches was left out. */
  IMPLAUSIBLE("values beyond what a helicopter reaches, left out"),
  /** Nothing was recorded for a time; it was not filled. */
  GAP("gaps, not filled"),
  /** A quantity recorded less often than others was worked out between its readings. */
  SLOW("values between slower readings, worked out on a straight line"),
  /** A receiver that stands gives no track; the one before was kept. */
  STANDING("tracks missing at a standstill, kept from before"),
  /** Speed and track were worked out from places. */
  FROM_PLACES("values worked out from latitude and longitude"),
  /** A height that fits nothing around it was left out by the smoother. */
  OUTLIER("readings that fit nothing around them, left out"),
  /** The level of a height stepped, as when a receiver changes satellites; the step was removed. */
  STEP("steps of the level, taken out");

  private final String label;

  RepairKind(String label) {
    this.label = label;
  }

  /**
   * What was done, in words.
   *
   * @return the words, to follow a count
   */
  public String label() {
    return label;
  }
}
