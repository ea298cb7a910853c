package io.github.ringstate.quantity;

/**
 * Units at the edges of the library. Inside, everything is SI (metre, kilogram, second, radian,
 * watt); each constant says by what factor its numbers are multiplied to get there.
 *
 * <p>The international foot and knot are exact by definition: 1 ft = 0.3048 m (international yard
 * and pound agreement, 1959), 1 kt = 1852 m / 3600 s (international nautical mile, 1929). So are
 * the pound (0.45359237 kg, the same agreement), the inch and the statute mile; the horsepower is
 * 550 foot-pounds-force a second, and the inch of mercury the conventional one, 3386.389 Pa (NIST
 * SP 811, 2008, appendix B.8, from memory).
 */
public enum Unit {
  /** A pure number. */
  ONE("", "", 1),
  /** Per cent of a whole. */
  PERCENT("%", "pct", 0.01),
  /** Metre. */
  METRE("m", "m", 1),
  /** Foot. */
  FOOT("ft", "ft", 0.3048),
  /** Second. */
  SECOND("s", "s", 1),
  /** Inch. */
  INCH("in", "in", 0.0254),
  /** Kilogram. */
  KILOGRAM("kg", "kg", 1),
  /** Pound, a mass. */
  POUND("lb", "lb", 0.45359237),
  /** Metre per second. */
  METRE_PER_SECOND("m/s", "m_per_s", 1),
  /** Metre per second squared. */
  METRE_PER_SECOND_SQUARED("m/s2", "m_per_s2", 1),
  /** Knot. */
  KNOT("kt", "kt", 1852.0 / 3600.0),
  /** Kilometre per hour. */
  KILOMETRE_PER_HOUR("km/h", "km_per_h", 1000.0 / 3600.0),
  /** Statute mile per hour. */
  MILE_PER_HOUR("mph", "mph", 0.44704),
  /** Foot per minute. */
  FOOT_PER_MINUTE("ft/min", "fpm", 0.3048 / 60),
  /** Radian, an angle. */
  RADIAN("rad", "rad", 1),
  /** Radian per second. */
  RADIAN_PER_SECOND("rad/s", "rad_per_s", 1),
  /** Radian squared. */
  SQUARE_RADIAN("rad2", "rad2", 1),
  /** Radian for a metre per second. */
  RADIAN_SECOND_PER_METRE("rad s/m", "rad_s_per_m", 1),
  /** Degree of angle. */
  DEGREE("deg", "deg", Math.PI / 180),
  /** Degree per second. */
  DEGREE_PER_SECOND("deg/s", "deg_per_s", Math.PI / 180),
  /** Degree per second squared. */
  DEGREE_PER_SECOND_SQUARED("deg/s2", "deg_per_s2", Math.PI / 180),
  /** Per radian. */
  PER_RADIAN("1/rad", "per_rad", 1),
  /** Per radian squared. */
  PER_SQUARE_RADIAN("1/rad2", "per_rad2", 1),
  /** Square metre. */
  SQUARE_METRE("m2", "m2", 1),
  /** Kilogram square metre, a moment of inertia. */
  KILOGRAM_SQUARE_METRE("kg m2", "kg_m2", 1),
  /** Newton. */
  NEWTON("N", "n", 1),
  /** Watt. */
  WATT("W", "w", 1),
  /** Kilowatt. */
  KILOWATT("kW", "kw", 1000),
  /** Horsepower, 550 foot-pounds-force per second. */
  HORSEPOWER("hp", "hp", 550 * 0.3048 * 0.45359237 * 9.80665),
  /** Kilogram per cubic metre. */
  KILOGRAM_PER_CUBIC_METRE("kg/m3", "kg_per_m3", 1),
  /** Kelvin, also for a difference of temperatures. */
  KELVIN("K", "k", 1),
  /** Pascal. */
  PASCAL("Pa", "pa", 1),
  /** Hectopascal, the millibar. */
  HECTOPASCAL("hPa", "hpa", 100),
  /** Inch of mercury, conventional. */
  INCH_OF_MERCURY("inHg", "inhg", 3386.389);

  /** Temperature at 0 degrees Celsius, K: exact by definition (SI Brochure, from memory). */
  public static final double ZERO_CELSIUS = 273.15;

  private final String symbol;
  private final String suffix;
  private final double factor;

  Unit(String symbol, String suffix, double factor) {
    this.symbol = symbol;
    this.suffix = suffix;
    this.factor = factor;
  }

  /**
   * The unit as a person reads it.
   *
   * @return the symbol, for instance {@code ft/min}; empty for a pure number
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The unit as the last part of a key in a file.
   *
   * @return the suffix, for instance {@code fpm}; empty for a pure number
   */
  public String suffix() {
    return suffix;
  }

  /**
   * Converts a number in this unit to SI.
   *
   * @param value the number, in this unit
   * @return the number, in SI units
   */
  public double toSi(double value) {
    return value * factor;
  }

  /**
   * Converts a number in SI units to this unit.
   *
   * @param value the number, in SI units
   * @return the number, in this unit
   */
  public double fromSi(double value) {
    return value / factor;
  }
}
