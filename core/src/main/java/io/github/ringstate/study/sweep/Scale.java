package io.github.ringstate.study.sweep;

import org.hipparchus.util.FastMath;

/** How values lie between two ends. */
public enum Scale {
  /** Equal differences. */
  LINEAR("linear"),
  /** Equal ratios; both ends must be positive. */
  LOG("log");

  private final String label;

  Scale(String label) {
    this.label = label;
  }

  /**
   * The scale in a word.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * The value at a part of the way.
   *
   * @param from the value at 0
   * @param to the value at 1
   * @param part the part of the way, 0 to 1
   * @return the value; at 0 and 1 exactly the ends, and never beyond them
   */
  public double at(double from, double to, double part) {
    if (part <= 0) {
      return from;
    }
    if (part >= 1) {
      return to;
    }
    double value =
        this == LINEAR
            ? from + (to - from) * part
            : from * FastMath.exp(FastMath.log(to / from) * part);
    return Math.min(Math.max(value, Math.min(from, to)), Math.max(from, to));
  }

  void check(String key, double from, double to) {
    if (!(Math.abs(from) <= Double.MAX_VALUE && Math.abs(to) <= Double.MAX_VALUE && from != to)) {
      throw new SettingException(
          key, "goes from " + from + " to " + to, "two different, finite ends");
    }
    if (this == LOG && !(from > 0 && to > 0)) {
      throw new SettingException(
          key, "goes from " + from + " to " + to + " by ratios", "two positive ends");
    }
  }
}
