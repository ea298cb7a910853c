package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Air as users give it: a pressure altitude and a temperature. */
final class Atmospheres {

  private static final String TEMPERATURE = "--oat-c";

  private Atmospheres() {}

  /**
   * The airs at some pressure altitudes.
   *
   * @param altitudes pressure altitudes, m
   * @param temperature the outside air temperature at all of them, or null for a standard day
   * @return an air for each altitude
   * @throws io.github.ringstate.files.error.UserError if the temperature is wrong
   */
  static List<Air> of(List<Double> altitudes, @Nullable String temperature) {
    return altitudes.stream()
        .map(
            altitude ->
                temperature == null
                    ? StandardAtmosphere.at(altitude)
                    : TemperatureText.air(TEMPERATURE, temperature, altitude))
        .toList();
  }
}
