package io.github.ringstate.instructor.option;

import io.github.ringstate.air.LowAltitudeGusts;

/**
 * How rough the air is, in the words of a forecast; MIL-F-8785C (1980) says what they stand for.
 */
public enum Turbulence {
  /** Light. */
  LIGHT("light", LowAltitudeGusts.LIGHT_WIND_MIL_F_8785C),
  /** Moderate. */
  MODERATE("moderate", LowAltitudeGusts.MODERATE_WIND_MIL_F_8785C),
  /** Severe. */
  SEVERE("severe", LowAltitudeGusts.SEVERE_WIND_MIL_F_8785C);

  /** The option that takes such a word, in all commands. */
  public static final String OPTION = "--turbulence";

  private final String label;
  private final double wind;

  Turbulence(String label, double wind) {
    this.label = label;
    this.wind = wind;
  }

  /**
   * The category's name.
   *
   * @return one lower-case word
   */
  public String label() {
    return label;
  }

  /**
   * The mean wind that such turbulence goes with.
   *
   * @return the wind 20 ft above the ground, m/s
   */
  public double wind() {
    return wind;
  }
}
