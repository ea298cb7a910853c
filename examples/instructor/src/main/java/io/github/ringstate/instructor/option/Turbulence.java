package io.github.ringstate.instructor.option;

import java.util.List;

/**
 * How rough the air is, in the words of a forecast; MIL-F-8785C (1980) says what they stand for.
 *
 * @param label the category's name, one lower-case word
 * @param knots the mean wind that such turbulence goes with, 20 ft above the ground, kt
 */
record Turbulence(String label, double knots) {

  /** The option that takes such a word, in all commands. */
  static final String OPTION = "--turbulence";

  /** All categories. */
  static final List<Turbulence> ALL =
      List.of(
          new Turbulence("light", 15),
          new Turbulence("moderate", 30),
          new Turbulence("severe", 45));
}
