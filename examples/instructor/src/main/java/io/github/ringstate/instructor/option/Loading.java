package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.conditions.Conditions;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A craft at one mass in one air. */
public final class Loading {

  @Mixin private final CraftOption craft = new CraftOption();

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
   * The craft at the mass given.
   *
   * @return the craft
   * @throws UserError if there is none of that name, its file is bad, or it may not have that mass
   */
  public Helicopter craft() {
    return Masses.one(craft.craft(), mass);
  }

  /**
   * The height-velocity curve that the craft's file holds.
   *
   * @return the curve; none is known if the file holds no points, or the craft is no file
   */
  public HeightVelocityCurve heightVelocity() {
    return craft.heightVelocity();
  }

  /**
   * The craft in the air given.
   *
   * @return craft, mass and air
   * @throws UserError if an option is wrong, or the rotor cannot carry the craft in this air
   */
  public Conditions conditions() {
    return Conditions.of(craft(), air());
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
