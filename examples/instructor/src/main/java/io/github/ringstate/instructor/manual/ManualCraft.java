package io.github.ringstate.instructor.manual;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.rotor.Rotor;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * A craft made of a manual's numbers; what no manual has is filled in by the size of the craft.
 *
 * @param craft the craft, at its greatest mass
 * @param filled the numbers that were filled in by size; all others not in the manual have their
 *     standard value
 */
record ManualCraft(Helicopter craft, List<Filled> filled) {

  /** The craft with all standard numbers, kg: from it areas grow as the square of the size. */
  private static final double STANDARD_MASS = 600;

  /**
   * A number that no manual has.
   *
   * @param parameter what it is
   * @param value the value, in its own unit
   * @param low the low end of the range for the class
   * @param high the high end
   */
  record Filled(Parameter parameter, double value, double low, double high) {}

  ManualCraft {
    filled = List.copyOf(filled);
  }

  /**
   * Fills a craft in.
   *
   * @param manual the manual's numbers
   * @return the craft
   * @throws io.github.ringstate.quantity.OutOfRangeException if the numbers make no craft
   */
  static ManualCraft of(ManualNumbers manual) {
    double radius = manual.radius();
    double mass = manual.maximumMass();
    double area = FastMath.pow(mass / STANDARD_MASS, 2.0 / 3);
    List<Filled> filled = new ArrayList<>();
    // each range is what the demo craft and their neighbours span: assumed, no source
    add(filled, Helicopter.SEA_LEVEL_POWER, 1.25 * manual.takeOffPower(), 1, 1.6, 1.25);
    add(filled, Rotor.INERTIA, 0.02 * mass * radius * radius, 0.012, 0.03, 0.02);
    add(filled, CraftBody.FORWARD_AREA, 0.5 * area, 0.3, 0.8, 0.5);
    add(filled, CraftBody.SIDE_AREA, 1.8 * area, 1.2, 2.6, 1.8);
    add(filled, CraftBody.UNDERSIDE_AREA, 1.5 * area, 1.0, 2.2, 1.5);
    add(filled, CraftBody.TAIL_ARM, 1.18 * radius, 1.1, 1.25, 1.18);
    add(filled, Rotor.HUB_HEIGHT, Math.min(0.65 * radius, 5), 0.5, 0.8, 0.65);
    ParameterSet numbers =
        Helicopter.STANDARD_NUMBERS
            .with(Helicopter.MASS, mass)
            .with(Helicopter.MINIMUM_MASS, manual.emptyMass())
            .with(Helicopter.MAXIMUM_MASS, mass)
            .with(Rotor.RADIUS, radius)
            .with(Rotor.SOLIDITY, manual.solidity())
            .with(Rotor.TIP_SPEED, manual.tipSpeed())
            .with(Helicopter.CONTINUOUS_POWER, manual.continuousPower())
            .with(Helicopter.TAKE_OFF_POWER, manual.takeOffPower());
    for (Parameter usual : EngineKind.optional()) {
      numbers = numbers.with(usual, manual.engine().usual(usual));
    }
    for (Filled one : filled) {
      numbers = numbers.with(one.parameter(), one.value());
    }
    return new ManualCraft(
        new Helicopter(
            manual.name(),
            ManualMessages.SAY.description(),
            manual.sense(),
            manual.engine(),
            numbers),
        filled);
  }

  /** The ends of the range are in the same proportion to the factor as the value. */
  private static void add(
      List<Filled> filled,
      Parameter parameter,
      double value,
      double low,
      double high,
      double factor) {
    filled.add(new Filled(parameter, value, value * low / factor, value * high / factor));
  }
}
