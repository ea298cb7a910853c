package io.github.ringstate.files.recording;

/** What was left out of a recording or mended, or looks wrong. */
public enum RepairKind {
  /** A line or an element that is not what the format asks for was left out. */
  UNREADABLE(
      "line or point that cannot be read, left out",
      "lines or points that cannot be read, left out"),
  /** A sentence whose checksum does not fit was left out. */
  CHECKSUM("sentence with a wrong checksum, left out", "sentences with a wrong checksum, left out"),
  /** A reading that the receiver itself calls invalid was left out. */
  NO_FIX("reading without a position fix, left out", "readings without a position fix, left out"),
  /** A reading without a time was left out. */
  NO_TIME("reading without a time, left out", "readings without a time, left out"),
  /** A reading whose time is that of another was left out; the first counts. */
  REPEATED("reading with a repeated time, left out", "readings with a repeated time, left out"),
  /** A reading whose time does not fit between its neighbours was left out. */
  BACKWARD(
      "reading whose time goes back or jumps, left out",
      "readings whose time goes back or jumps, left out"),
  /** Readings that stood in the wrong place were put where their time says. */
  OUT_OF_ORDER("reading out of order, put in order", "readings out of order, put in order"),
  /** A value that is no number was left out. */
  NOT_A_NUMBER("value that is no number, left out", "values that are no number, left out"),
  /** A value that no helicopter reaches was left out. */
  IMPLAUSIBLE(
      "value beyond what a helicopter reaches, left out",
      "values beyond what a helicopter reaches, left out"),
  /** Nothing was recorded for a time; it was not filled. */
  GAP("gap, not filled", "gaps, not filled"),
  /** A quantity recorded less often than others was worked out between its readings. */
  SLOW(
      "value between slower readings, worked out on a straight line",
      "values between slower readings, worked out on a straight line"),
  /** A receiver that stands gives no track; the one before was kept. */
  STANDING(
      "track missing at a standstill, kept from before",
      "tracks missing at a standstill, kept from before"),
  /** Speed and track were worked out from places. */
  FROM_PLACES(
      "value worked out from latitude and longitude",
      "values worked out from latitude and longitude"),
  /** A height that fits nothing around it was left out by the smoother. */
  OUTLIER(
      "reading that fits nothing around it, left out",
      "readings that fit nothing around them, left out"),
  /** The level of a height stepped, as when a receiver changes satellites; the step was removed. */
  STEP(
      "step of the level, taken out: heights count from the level before it",
      "steps of the level, taken out: heights count from the level before the first"),
  /** A height changes faster than any helicopter climbs or sinks, which a wrong unit explains. */
  TOO_FAST(
      "reading where the height changes faster than any helicopter's, KEPT: check its unit",
      "readings where the height changes faster than any helicopter's, KEPT: check its unit");

  private final String one;
  private final String several;

  RepairKind(String one, String several) {
    this.one = one;
    this.several = several;
  }

  /**
   * What was done, in words.
   *
   * @return the words for several
   */
  public String label() {
    return several;
  }

  /**
   * What was done, in words.
   *
   * @param count how often
   * @return the words, to follow the count
   */
  public String label(int count) {
    return count == 1 ? one : several;
  }
}
