package io.github.ringstate.air;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;

/**
 * The state of still air at one place. {@link StandardAtmosphere} makes dry air that obeys the gas
 * law; the components are free so that measured or moist air can be given too, which is lighter
 * than dry air of the same pressure and temperature.
 *
 * @param pressureAltitude altitude in the standard atmosphere at which this pressure is found, m
 *     (geopotential), -1000 to 11000
 * @param temperature static temperature, K, 150 to 400
 * @param pressure static pressure, Pa, 20000 to 120000
 * @param density density, kg/m3, 0.2 to 2
 */
public record Air(double pressureAltitude, double temperature, double pressure, double density) {

  private static final Quantity TEMPERATURE =
      new Quantity("air temperature", Unit.KELVIN, 150, 400);
  private static final Quantity PRESSURE =
      new Quantity("air pressure", Unit.PASCAL, 20_000, 120_000);
  private static final Quantity DENSITY =
      new Quantity("air density", Unit.KILOGRAM_PER_CUBIC_METRE, 0.2, 2);

  /**
   * Checks every component against its range.
   *
   * @throws io.github.ringstate.quantity.OutOfRangeException if a component is outside its range or
   *     not a number
   */
  public Air {
    StandardAtmosphere.PRESSURE_ALTITUDE.check(pressureAltitude);
    TEMPERATURE.check(temperature);
    PRESSURE.check(pressure);
    DENSITY.check(density);
  }

  /**
   * Density over that of the standard atmosphere at sea level.
   *
   * @return the ratio to 1.225 kg/m3, dimensionless
   */
  public double densityRatio() {
    return density / StandardAtmosphere.SEA_LEVEL_DENSITY_USSA_1976;
  }

  /**
   * Altitude in the standard atmosphere at which this density is found.
   *
   * @return the density altitude, m (geopotential)
   * @throws io.github.ringstate.quantity.OutOfRangeException if the density is beyond what {@link
   *     StandardAtmosphere#densityAltitude} covers
   */
  public double densityAltitude() {
    return StandardAtmosphere.densityAltitude(density);
  }

  /** Every component with its unit. */
  @Override
  public String toString() {
    return "air at "
        + pressureAltitude
        + " m pressure altitude: "
        + temperature
        + " K, "
        + pressure
        + " Pa, "
        + density
        + " kg/m3";
  }
}
