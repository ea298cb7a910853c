package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Air as users give them: pressure altitude and outside air temperature. */
final class Atmospheres {

  private static final String ALTITUDE = "--pressure-altitude-ft";
  private static final String TEMPERATURE = "--oat-c";

  private Atmospheres() {}

  /**
   * The airs at some pressure altitudes.
   *
   * @param altitudes pressure altitudes in ft with commas between
   * @param temperature the outside air temperature in C at all of them, or null for a standard day
   * @return an air for each altitude
   * @throws UserError if a number is wrong
   */
  static List<Air> several(String altitudes, @Nullable String temperature) {
    List<Air> airs = new ArrayList<>();
    List<Double> seen = new ArrayList<>();
    for (String part : Lists.parts(ALTITUDE, altitudes)) {
      Air air = one(part, temperature);
      if (seen.contains(air.pressureAltitude())) {
        throw Lists.twice(ALTITUDE, altitudes, part);
      }
      seen.add(air.pressureAltitude());
      airs.add(air);
    }
    return airs;
  }

  /**
   * The air at a pressure altitude.
   *
   * @param altitude the pressure altitude, ft
   * @param temperature the outside air temperature in C, or null for a standard day
   * @return the air
   * @throws UserError if a number is wrong
   */
  static Air one(String altitude, @Nullable String temperature) {
    Air standard = standard(altitude);
    if (temperature == null) {
      return standard;
    }
    double celsius = NumberText.any(TEMPERATURE, temperature, "a number of degrees Celsius");
    try {
      return StandardAtmosphere.withTemperature(
          standard.pressureAltitude(), celsius + Unit.ZERO_CELSIUS);
    } catch (OutOfRangeException outside) {
      throw UserError.option(
          TEMPERATURE,
          temperature,
          Ranges.celsius(outside.quantity()) + " at a pressure altitude of " + altitude + " ft");
    }
  }

  private static Air standard(String altitude) {
    double feet = NumberText.any(ALTITUDE, altitude, "a number of feet");
    try {
      return StandardAtmosphere.at(Unit.FOOT.toSi(feet));
    } catch (OutOfRangeException outside) {
      throw UserError.option(
          ALTITUDE, altitude, RangeText.of(Ranges.in(Unit.FOOT, outside.quantity())));
    }
  }
}
