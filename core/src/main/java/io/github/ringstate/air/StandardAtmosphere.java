package io.github.ringstate.air;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.util.FastMath;

/**
 * The troposphere of the U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), from -1000 m to 11000 m
 * of geopotential altitude, and days that are warmer or colder than it.
 *
 * <p>On such a day the pressure at a pressure altitude is the standard one by definition, the
 * temperature is the standard one plus the offset, and the density follows from the gas law. The
 * altitude is therefore what an altimeter set to 1013.25 hPa shows, not a height above ground.
 */
public final class StandardAtmosphere {

  /**
   * Standard acceleration of gravity, m/s2: third General Conference on Weights and Measures, 1901.
   */
  public static final double STANDARD_GRAVITY_CGPM_1901 = 9.80665;

  /** Temperature at sea level, K. */
  public static final double SEA_LEVEL_TEMPERATURE_USSA_1976 = 288.15;

  /** Pressure at sea level, Pa. */
  public static final double SEA_LEVEL_PRESSURE_USSA_1976 = 101_325;

  /**
   * Density at sea level as printed, kg/m3; it follows from the other constants to 2 parts in 1e9.
   */
  public static final double SEA_LEVEL_DENSITY_USSA_1976 = 1.225;

  /**
   * Gas constant of dry air, J/(kg K): 8314.32 J/(kmol K) over 28.964420 kg/kmol. ISO 2533:1975
   * gives the molar mass with these digits; USSA 1976 rounds it to 28.9644, with which its own
   * printed density at sea level comes out 7 parts in 1e7 too small.
   */
  public static final double AIR_GAS_CONSTANT_ISO_2533_1975 = 8314.32 / 28.964420;

  /** Change of temperature with geopotential altitude up to 11 km, K/m. */
  public static final double LAPSE_RATE_USSA_1976 = -0.0065;

  /** Range of pressure altitude, m. The lower bound is below any ground on any day. */
  public static final Quantity PRESSURE_ALTITUDE =
      new Quantity("pressure altitude", Unit.METRE, -1000, 11_000);

  /** Range of altimeter settings, Pa: wider than the scale of an altimeter; no source. */
  public static final Quantity ALTIMETER_SETTING =
      new Quantity("altimeter setting", Unit.PASCAL, 90_000, 108_500);

  /**
   * Range of the offset from the standard temperature, K: wider than the limits helicopters fly in;
   * no source.
   */
  static final Quantity TEMPERATURE_OFFSET =
      new Quantity("temperature offset from the standard atmosphere", Unit.KELVIN, -60, 60);

  /** Exponent of the pressure, USSA 1976 equation 33a: about 5.2559. */
  private static final double PRESSURE_EXPONENT =
      -STANDARD_GRAVITY_CGPM_1901 / (AIR_GAS_CONSTANT_ISO_2533_1975 * LAPSE_RATE_USSA_1976);

  private static final double TROPOPAUSE = PRESSURE_ALTITUDE.high();
  private static final double TROPOPAUSE_TEMPERATURE = standardTemperature(TROPOPAUSE);

  private static final double DENSITY_AT_SEA_LEVEL =
      gasLawDensity(SEA_LEVEL_PRESSURE_USSA_1976, SEA_LEVEL_TEMPERATURE_USSA_1976);
  private static final double DENSITY_AT_TROPOPAUSE =
      gasLawDensity(standardPressure(TROPOPAUSE), TROPOPAUSE_TEMPERATURE);

  private static final Quantity PRESSURE =
      new Quantity(
          "air pressure",
          Unit.PASCAL,
          standardPressure(PRESSURE_ALTITUDE.high()),
          standardPressure(PRESSURE_ALTITUDE.low()));

  /** Just beyond the densities of the hottest day at 11 km and the coldest at -1000 m. */
  private static final Quantity DENSITY =
      new Quantity("air density", Unit.KILOGRAM_PER_CUBIC_METRE, 0.284, 1.7);

  private StandardAtmosphere() {}

  /**
   * Air on a standard day.
   *
   * @param pressureAltitude pressure altitude, m (geopotential), -1000 to 11000
   * @return the air there
   * @throws io.github.ringstate.quantity.OutOfRangeException if the altitude is outside its range
   *     or not a number
   */
  public static Air at(double pressureAltitude) {
    return at(pressureAltitude, 0);
  }

  /**
   * Air on a day that differs from the standard one by the same temperature at all altitudes.
   *
   * @param pressureAltitude pressure altitude, m (geopotential), -1000 to 11000
   * @param temperatureOffset temperature less the standard temperature at that altitude, K, -60 to
   *     60
   * @return the air there
   * @throws io.github.ringstate.quantity.OutOfRangeException if an argument is outside its range or
   *     not a number
   */
  public static Air at(double pressureAltitude, double temperatureOffset) {
    PRESSURE_ALTITUDE.check(pressureAltitude);
    TEMPERATURE_OFFSET.check(temperatureOffset);
    return dry(pressureAltitude, standardTemperature(pressureAltitude) + temperatureOffset);
  }

  /**
   * Air whose temperature has been read off a thermometer.
   *
   * @param pressureAltitude pressure altitude, m (geopotential), -1000 to 11000
   * @param temperature outside air temperature, K, at most 60 K from the standard temperature at
   *     that altitude
   * @return the air there
   * @throws io.github.ringstate.quantity.OutOfRangeException if an argument is outside its range or
   *     not a number
   */
  public static Air withTemperature(double pressureAltitude, double temperature) {
    PRESSURE_ALTITUDE.check(pressureAltitude);
    double standard = standardTemperature(pressureAltitude);
    // whole millikelvin, outward, keep rounding noise out of the message
    new Quantity(
            "air temperature",
            Unit.KELVIN,
            Math.floor(1000 * (standard + TEMPERATURE_OFFSET.low())) / 1000,
            Math.ceil(1000 * (standard + TEMPERATURE_OFFSET.high())) / 1000)
        .check(temperature);
    return dry(pressureAltitude, temperature);
  }

  /**
   * Altitude at which the standard atmosphere has a pressure; the inverse of {@link #at(double)}.
   *
   * @param pressure static pressure, Pa, of altitudes from 11000 m down to -1000 m: 22632 to 113929
   * @return the pressure altitude, m (geopotential)
   * @throws io.github.ringstate.quantity.OutOfRangeException if the pressure is outside its range
   *     or not a number
   */
  public static double pressureAltitude(double pressure) {
    double ratio = PRESSURE.check(pressure) / SEA_LEVEL_PRESSURE_USSA_1976;
    double altitude = altitudeOfTemperatureRatio(FastMath.pow(ratio, 1 / PRESSURE_EXPONENT));
    // rounding must not push the altitude of an accepted pressure out of the accepted altitudes
    return Math.min(PRESSURE_ALTITUDE.high(), Math.max(PRESSURE_ALTITUDE.low(), altitude));
  }

  /**
   * Pressure altitude of a place where an altimeter with a setting shows the elevation, which is
   * what the setting (QNH) is given for. The scale of an altimeter is the standard atmosphere's,
   * and its setting shifts it.
   *
   * @param elevation elevation above mean sea level, m
   * @param setting altimeter setting, Pa, 90000 to 108500
   * @return the pressure altitude, m (geopotential)
   * @throws io.github.ringstate.quantity.OutOfRangeException if the setting is outside its range or
   *     not a number, or the pressure altitude would be
   */
  public static double pressureAltitude(double elevation, double setting) {
    return PRESSURE_ALTITUDE.check(elevation + pressureAltitude(ALTIMETER_SETTING.check(setting)));
  }

  /**
   * Altitude at which the standard atmosphere has a density. Air on cold days is denser than the
   * standard atmosphere at -1000 m, where its lapse rate is continued downward; on hot days near 11
   * km it is thinner than there, where the isothermal layer above 11 km is used (USSA 1976 equation
   * 33b).
   *
   * @param density density, kg/m3, 0.284 to 1.7, which covers all that {@link #at(double, double)}
   *     gives
   * @return the density altitude, m (geopotential)
   * @throws io.github.ringstate.quantity.OutOfRangeException if the density is outside its range or
   *     not a number
   */
  public static double densityAltitude(double density) {
    DENSITY.check(density);
    if (density < DENSITY_AT_TROPOPAUSE) {
      double scaleHeight =
          AIR_GAS_CONSTANT_ISO_2533_1975 * TROPOPAUSE_TEMPERATURE / STANDARD_GRAVITY_CGPM_1901;
      return TROPOPAUSE + scaleHeight * FastMath.log(DENSITY_AT_TROPOPAUSE / density);
    }
    return altitudeOfTemperatureRatio(
        FastMath.pow(density / DENSITY_AT_SEA_LEVEL, 1 / (PRESSURE_EXPONENT - 1)));
  }

  private static Air dry(double pressureAltitude, double temperature) {
    double pressure = standardPressure(pressureAltitude);
    return new Air(pressureAltitude, temperature, pressure, gasLawDensity(pressure, temperature));
  }

  /** USSA 1976 equation 23. */
  private static double standardTemperature(double altitude) {
    return SEA_LEVEL_TEMPERATURE_USSA_1976 + LAPSE_RATE_USSA_1976 * altitude;
  }

  /** USSA 1976 equation 33a. */
  private static double standardPressure(double altitude) {
    double ratio = standardTemperature(altitude) / SEA_LEVEL_TEMPERATURE_USSA_1976;
    return SEA_LEVEL_PRESSURE_USSA_1976 * FastMath.pow(ratio, PRESSURE_EXPONENT);
  }

  /** USSA 1976 equation 42. */
  private static double gasLawDensity(double pressure, double temperature) {
    return pressure / (AIR_GAS_CONSTANT_ISO_2533_1975 * temperature);
  }

  private static double altitudeOfTemperatureRatio(double ratio) {
    return SEA_LEVEL_TEMPERATURE_USSA_1976 * (ratio - 1) / LAPSE_RATE_USSA_1976;
  }
}
