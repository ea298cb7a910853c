package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One mass in one air. */
public final class Loading {

  @Option(
      names = "--mass-kg",
      paramLabel = "KG",
      description = "Mass, within the limits of the craft. Unless given: the craft's own.")
  private @Nullable String mass;

  @Option(
      names = "--pressure-altitude-ft",
      paramLabel = "FT",
      description = "Pressure altitude. Unless given: 0.")
  private @Nullable String altitude;

  @Option(
      names = "--oat-c",
      paramLabel = "C",
      description =
          "Outside air temperature, degrees Celsius. Unless given: that of the standard day.")
  private @Nullable String temperature;

  @Mixin private final AltimeterOptions altimeter = new AltimeterOptions();

  /** Made by picocli. */
  public Loading() {}

  /**
   * A craft at the mass given.
   *
   * @param craft the craft
   * @return the craft at that mass
   */
  public Helicopter load(Helicopter craft) {
    return Masses.one(craft, mass);
  }

  /**
   * The air given.
   *
   * @return the air
   */
  public Air air() {
    List<Double> altitudes = altimeter.pressureAltitudes(altitude);
    if (altitudes.size() > 1) {
      throw UserError.usage("one pressure altitude or elevation is wanted here, not several");
    }
    return Atmospheres.of(altitudes, temperature).get(0);
  }
}
