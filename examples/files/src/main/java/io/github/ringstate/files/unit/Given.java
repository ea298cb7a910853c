package io.github.ringstate.files.unit;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people give it: a plain decimal, and a unit if they wrote one.
 *
 * @param number the number, finite
 * @param unit the letters behind it; empty if there are none
 */
public record Given(double number, String unit) {

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile(
          "([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,4})?)\\s*([\\p{L}°][\\p{L}/]*)?");

  /**
   * Reads a number with or without a unit behind it.
   *
   * @param text what was given, for instance {@code 600}, {@code 1235lb} or {@code 5 m/s}
   * @return the number; empty if it is none, or not finite
   */
  public static Optional<Given> of(String text) {
    Matcher parts = NUMBER_AND_UNIT.matcher(text.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(parts.group(1));
    return Double.isFinite(number)
        // a minus sign on zero has no meaning here
        ? Optional.of(new Given(number + 0.0, parts.group(2) == null ? "" : parts.group(2)))
        : Optional.empty();
  }
}
