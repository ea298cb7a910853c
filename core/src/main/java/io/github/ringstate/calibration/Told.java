package io.github.ringstate.calibration;

/** What recordings tell of a number, by its deviation after the fit over that before. */
public enum Told {
  /** The deviation is at most half of what it was. */
  BY_THE_DATA("told by the data"),
  /** It is less than before, but not by half. */
  PARTLY("partly told"),
  /** It is more than nine tenths of what it was: the number is what was thought before. */
  NOT("not told");

  private static final double HALF = 0.5;
  private static final double MOST = 0.9;

  private final String label;

  Told(String label) {
    this.label = label;
  }

  /**
   * The word for people.
   *
   * @return some lower-case words
   */
  public String label() {
    return label;
  }

  /**
   * What a ratio of deviations says.
   *
   * @param ratio deviation after the fit over deviation before, 0 or more
   * @return the word
   */
  public static Told by(double ratio) {
    if (!(ratio >= 0)) {
      throw new IllegalArgumentException("a ratio of deviations is not " + ratio);
    }
    return ratio <= HALF ? BY_THE_DATA : ratio <= MOST ? PARTLY : NOT;
  }
}
