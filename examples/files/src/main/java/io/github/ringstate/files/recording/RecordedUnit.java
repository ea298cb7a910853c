package io.github.ringstate.files.recording;

import io.github.ringstate.quantity.Unit;

/** In what a column of a recording may be given. */
public enum RecordedUnit {
  /** Second. */
  SECOND("s", "s", 1),
  /** Thousandth of a second. */
  MILLISECOND("ms", "ms", 1e-3),
  /** Date and time by ISO 8601; without an offset it is taken as UTC. */
  ISO_TIME("iso", "iso", 1),
  /** Time of day, hours:minutes:seconds; it goes on over midnight. */
  TIME_OF_DAY("hms", "hms", 1),
  /** Metre. */
  METRE("m", "m", 1),
  /** Foot. */
  FOOT("ft", "ft", Unit.FOOT.toSi(1)),
  /** Metre per second. */
  METRE_PER_SECOND("m/s", "m_per_s", 1),
  /** Knot. */
  KNOT("kt", "kt", Unit.KNOT.toSi(1)),
  /** Kilometre per hour. */
  KILOMETRE_PER_HOUR("km/h", "km_per_h", 1 / 3.6),
  /** Foot per minute. */
  FOOT_PER_MINUTE("fpm", "fpm", Unit.FOOT_PER_MINUTE.toSi(1)),
  /** Degree of angle. */
  DEGREE("deg", "deg", Unit.DEGREE.toSi(1)),
  /** Radian. */
  RADIAN("rad", "rad", 1),
  /** Per cent of a whole. */
  PERCENT("percent", "pct", 0.01),
  /** A share of a whole. */
  SHARE("1", "share", 1);

  private final String key;
  private final String suffix;
  private final double factor;

  RecordedUnit(String key, String suffix, double factor) {
    this.key = key;
    this.suffix = suffix;
    this.factor = factor;
  }

  /**
   * The unit as a map of columns names it.
   *
   * @return the key, for instance {@code m/s}
   */
  public String key() {
    return key;
  }

  /** The last part of a column's name that needs no map. */
  String suffix() {
    return suffix;
  }

  /** A number in this unit, in SI units. */
  double toSi(double value) {
    return value * factor;
  }

  /** A text in this unit, in SI units; NaN if it is none. A time of day is that of one day. */
  double read(String text) {
    return switch (this) {
      case ISO_TIME -> Moments.seconds(text);
      case TIME_OF_DAY -> DayClock.seconds(text);
      default -> toSi(Numerals.number(text));
    };
  }
}
