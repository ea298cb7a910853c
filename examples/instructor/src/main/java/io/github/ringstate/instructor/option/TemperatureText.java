package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.files.unit.Given;
import io.github.ringstate.files.unit.TemperatureScale;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Quantity;

/** Temperatures as users type them: degrees Celsius, or with the scale behind the number. */
public final class TemperatureText {

  private TemperatureText() {}

  /**
   * Reads the temperature of the air at a pressure altitude.
   *
   * @param option the option's name
   * @param text what was given
   * @param altitude the pressure altitude, m
   * @return the air
   * @throws UserError if it is no temperature, or none that occurs there
   */
  public static Air air(String option, String text, double altitude) {
    Given given = NumberText.any(option, text, "a number of degrees Celsius, or one such as 95F");
    TemperatureScale scale = scale(option, text, given);
    try {
      return StandardAtmosphere.withTemperature(altitude, scale.toKelvin(given.number()));
    } catch (OutOfRangeException outside) {
      throw UserError.option(
          option, text, Ranges.of(outside.quantity(), scale) + " at this pressure altitude");
    }
  }

  /**
   * Reads by how much a temperature differs from another.
   *
   * @param option the option's name
   * @param text what was given, in K unless a scale stands behind it
   * @param allowed the range, in K
   * @return the difference, K
   * @throws UserError if it is no number or out of range
   */
  static double difference(String option, String text, Quantity allowed) {
    Given given = NumberText.any(option, text, "a number, " + RangeText.of(allowed));
    double kelvin =
        given.unit().isEmpty()
            ? given.number()
            : scale(option, text, given).difference(given.number());
    if (!(kelvin >= allowed.low() && kelvin <= allowed.high())) {
      throw UserError.option(option, text, RangeText.of(allowed));
    }
    return kelvin;
  }

  private static TemperatureScale scale(String option, String text, Given given) {
    return given.unit().isEmpty()
        ? TemperatureScale.CELSIUS
        : TemperatureScale.named(given.unit())
            .orElseThrow(() -> UserError.option(option, text, "a number with C, F or K behind it"));
  }
}
