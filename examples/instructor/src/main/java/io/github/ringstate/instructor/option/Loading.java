package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import org.jspecify.annotations.Nullable;
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
      defaultValue = "0",
      description = "Pressure altitude. Unless given: ${DEFAULT-VALUE}.")
  private String altitude = "";

  @Option(
      names = "--oat-c",
      paramLabel = "C",
      description =
          "Outside air temperature, degrees Celsius. Unless given: that of the standard day.")
  private @Nullable String temperature;

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
    return Atmospheres.one(altitude, temperature);
  }
}
