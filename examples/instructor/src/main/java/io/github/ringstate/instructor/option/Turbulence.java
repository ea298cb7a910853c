package io.github.ringstate.instructor.option;

import io.github.ringstate.quantity.Unit;

/**
 * How rough the air is, in the words of a forecast; MIL-F-8785C (1980) says what they stand for.
 */
public enum Turbulence {
  /** Light. */
  LIGHT("light", 15),
  /** Moderate. */
  MODERATE("moderate", 30),
  /** Severe. */
  SEVERE("severe", 45);

  /** The option that takes such a word, in all commands. */
  public static final String OPTION = "--turbulence";

  private final String label;
  private final double knots;

  Turbulence(String label, double knots) {
    this.label = label;
    this.knots = knots;
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
    return Unit.KNOT.toSi(knots);
  }
}
