package io.github.ringstate.instructor.option;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/**
 * Where the craft is in the atmosphere: a pressure altitude, or what stands in a weather report.
 */
final class AltimeterOptions {

  private static final String ALTITUDE = "--pressure-altitude-ft";
  private static final String ELEVATION = "--elevation-ft";
  private static final String ALTIMETER = "--altimeter-hpa";

  /** From below the lowest shore to above the highest summit; no source. */
  private static final Quantity ELEVATIONS = new Quantity("elevation", Unit.FOOT, -1500, 30_000);

  @Option(
      names = ELEVATION,
      paramLabel = "FT",
      description =
          "In place of a pressure altitude: elevation of the place above mean sea level, with"
              + " --altimeter-hpa.")
  private @Nullable String elevation;

  @Option(
      names = ALTIMETER,
      paramLabel = "HPA",
      description = "The altimeter setting (QNH) there, for instance 1003 or 29.62inHg.")
  private @Nullable String altimeter;

  /** Made by picocli. */
  AltimeterOptions() {}

  /**
   * The pressure altitudes given.
   *
   * @param altitudes pressure altitudes in ft with commas between, or null
   * @return the pressure altitudes, m, in the order given, none twice; that of sea level on a
   *     standard day if none is given
   * @throws UserError if a number is wrong, or both ways are mixed
   */
  List<Double> pressureAltitudes(@Nullable String altitudes) {
    if (elevation == null && altimeter == null) {
      return altitudes == null
          ? List.of(0.0)
          : metres(ALTITUDE, altitudes, Ranges.in(Unit.FOOT, StandardAtmosphere.PRESSURE_ALTITUDE));
    }
    if (altitudes != null) {
      throw UserError.usage(
          ALTITUDE + " and " + ELEVATION + " with " + ALTIMETER + " exclude each other");
    }
    if (elevation == null || altimeter == null) {
      throw UserError.usage(
          ELEVATION
              + " and "
              + ALTIMETER
              + " need each other: the elevation of a place and the altimeter setting there");
    }
    double setting =
        NumberText.si(
            ALTIMETER,
            altimeter,
            Ranges.in(Unit.HECTOPASCAL, StandardAtmosphere.ALTIMETER_SETTING));
    return metres(ELEVATION, elevation, ELEVATIONS).stream()
        .map(metres -> StandardAtmosphere.pressureAltitude(metres, setting))
        .toList();
  }

  private static List<Double> metres(String option, String altitudes, Quantity allowed) {
    return NumberText.several(option, altitudes, allowed).stream().map(Unit.FOOT::toSi).toList();
  }
}
