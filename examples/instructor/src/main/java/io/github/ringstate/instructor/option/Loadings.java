package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Several masses in several airs. */
public final class Loadings {

  @Option(
      names = "--mass-kg",
      paramLabel = "KG[,KG...]",
      description =
          "Mass, within the limits of the craft; several give a table each. Unless given: the"
              + " craft's own.")
  private @Nullable String masses;

  @Option(
      names = "--pressure-altitude-ft",
      paramLabel = "FT[,FT...]",
      description = "Pressure altitude; several give a table each. Unless given: 0.")
  private @Nullable String altitudes;

  @Option(
      names = "--oat-c",
      paramLabel = "C",
      description =
          "Outside air temperature, degrees Celsius, at every altitude given. Unless given: that of"
              + " the standard day.")
  private @Nullable String temperature;

  @Mixin private final AltimeterOptions altimeter = new AltimeterOptions();

  /** Made by picocli. */
  public Loadings() {}

  /**
   * A craft at the masses given.
   *
   * @param craft the craft
   * @return the craft at each mass
   */
  public List<Helicopter> load(Helicopter craft) {
    return Masses.several(craft, masses);
  }

  /**
   * The airs given.
   *
   * @return an air for each altitude
   */
  public List<Air> airs() {
    return Atmospheres.of(altimeter.pressureAltitudes(altitudes), temperature);
  }
}
