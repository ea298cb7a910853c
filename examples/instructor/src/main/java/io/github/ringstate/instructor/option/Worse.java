package io.github.ringstate.instructor.option;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A day that turns out worse than planned.
 *
 * @param heavier by how much the craft is heavier, kg
 * @param hotter by how much the air is hotter, K
 * @param later by how much pilots act later, s
 */
public record Worse(double heavier, double hotter, double later) {

  /** The option's name. */
  public static final String OPTION = "--compare";

  private static final Quantity HEAVIER = new Quantity("mass", Unit.KILOGRAM, 0, 10_000);
  private static final Quantity HOTTER = new Quantity("temperature", Unit.KELVIN, 0, 40);
  private static final Quantity LATER = new Quantity("delay", Unit.SECOND, 0, 5);

  /**
   * Reads how much worse.
   *
   * @param text three numbers with commas between
   * @return what they say
   * @throws UserError if they are not three numbers in their ranges
   */
  static Worse of(String text) {
    List<String> parts = Lists.parts(OPTION, text);
    if (parts.size() != 3) {
      throw UserError.option(OPTION, text, "three numbers: kg heavier, K hotter, s later");
    }
    return new Worse(
        NumberText.one(OPTION, parts.get(0), HEAVIER),
        TemperatureText.difference(OPTION, parts.get(1), HOTTER),
        NumberText.one(OPTION, parts.get(2), LATER));
  }

  /**
   * The craft on that day.
   *
   * @param craft the craft as planned
   * @return the heavier craft
   * @throws UserError if it may not be so heavy
   */
  public Helicopter on(Helicopter craft) {
    try {
      return craft.with(Helicopter.MASS, craft.numbers().get(Helicopter.MASS) + heavier);
    } catch (OutOfRangeException outside) {
      throw UserError.usage(
          OPTION + ": the heavier craft is out of its limits: " + outside.getMessage());
    }
  }

  /**
   * The air on that day.
   *
   * @param air the air as planned
   * @return the hotter air at the same pressure altitude
   * @throws UserError if it is out of range
   */
  public Air on(Air air) {
    try {
      return StandardAtmosphere.withTemperature(air.pressureAltitude(), air.temperature() + hotter);
    } catch (OutOfRangeException outside) {
      throw UserError.usage(OPTION + ": the hotter air is out of range: " + outside.getMessage());
    }
  }

  /**
   * Delays on that day.
   *
   * @param delays the delays as planned, s
   * @return the longer delays, s
   */
  public List<Double> on(List<Double> delays) {
    return delays.stream().map(delay -> delay + later).toList();
  }
}
