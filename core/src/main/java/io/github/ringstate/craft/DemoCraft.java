package io.github.ringstate.craft;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.rotor.Rotor;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Four helicopters to try things with. They are no real types: every number is invented within the
 * range that is typical for the class.
 */
public final class DemoCraft {

  /** A light two-seater with a piston engine. */
  public static final Helicopter TRAINER =
      new Helicopter(
          "trainer",
          "Invented two-seat light helicopter with a piston engine; no real type.",
          RotationSense.COUNTER_CLOCKWISE,
          EngineKind.PISTON,
          Helicopter.STANDARD_NUMBERS);

  /** A five-seater with one turbine, its rotor turning clockwise. */
  public static final Helicopter UTILITY =
      new Helicopter(
          "utility",
          "Invented five-seat helicopter with a single turbine; no real type.",
          RotationSense.CLOCKWISE,
          EngineKind.TURBINE,
          numbers(
              Map.ofEntries(
                  Map.entry(Helicopter.MASS, 1500.0), // invented
                  Map.entry(Helicopter.MINIMUM_MASS, 950.0), // invented
                  Map.entry(Helicopter.MAXIMUM_MASS, 1800.0), // invented
                  Map.entry(Rotor.RADIUS, 5.2), // invented
                  Map.entry(Rotor.SOLIDITY, 0.052), // invented
                  Map.entry(Rotor.TIP_SPEED, 210.0), // invented
                  Map.entry(Rotor.TWIST, -10.0), // invented
                  Map.entry(Rotor.ROOT_CUTOUT, 0.15), // invented
                  Map.entry(Rotor.INERTIA, 1000.0), // invented
                  Map.entry(Rotor.HUB_HEIGHT, 3.0), // invented
                  Map.entry(Helicopter.CONTINUOUS_POWER, 330.0), // invented
                  Map.entry(Helicopter.TAKE_OFF_POWER, 380.0), // invented
                  Map.entry(Helicopter.SEA_LEVEL_POWER, 470.0), // invented
                  Map.entry(Helicopter.ENGINE_TIME, EngineKind.TURBINE.responseTime()), // assumed
                  Map.entry(CraftBody.FORWARD_AREA, 0.9), // invented
                  Map.entry(CraftBody.SIDE_AREA, 4.0), // invented
                  Map.entry(CraftBody.UNDERSIDE_AREA, 3.5), // invented
                  Map.entry(CraftBody.DOWNLOAD, 0.03), // invented
                  Map.entry(CraftBody.TAIL_ARM, 6.2), // invented
                  Map.entry(CraftLimits.MAXIMUM_COLLECTIVE, 18.0)))); // invented

  /** A twin of about four tonnes. */
  public static final Helicopter TWIN =
      new Helicopter(
          "twin",
          "Invented helicopter of about four tonnes with two turbines; no real type.",
          RotationSense.COUNTER_CLOCKWISE,
          EngineKind.TURBINE,
          numbers(
              Map.ofEntries(
                  Map.entry(Helicopter.MASS, 3900.0), // invented
                  Map.entry(Helicopter.MINIMUM_MASS, 2400.0), // invented
                  Map.entry(Helicopter.MAXIMUM_MASS, 4300.0), // invented
                  Map.entry(Rotor.RADIUS, 6.3), // invented
                  Map.entry(Rotor.SOLIDITY, 0.085), // invented
                  Map.entry(Rotor.TIP_SPEED, 215.0), // invented
                  Map.entry(Rotor.TWIST, -10.0), // invented
                  Map.entry(Rotor.ROOT_CUTOUT, 0.2), // invented
                  Map.entry(Rotor.INERTIA, 2600.0), // invented
                  Map.entry(Rotor.HUB_HEIGHT, 3.5), // invented
                  Map.entry(Helicopter.CONTINUOUS_POWER, 960.0), // invented
                  Map.entry(Helicopter.TAKE_OFF_POWER, 1080.0), // invented
                  Map.entry(Helicopter.SEA_LEVEL_POWER, 1350.0), // invented
                  Map.entry(Helicopter.ENGINE_TIME, EngineKind.TURBINE.responseTime()), // assumed
                  Map.entry(CraftBody.FORWARD_AREA, 1.6), // invented
                  Map.entry(CraftBody.SIDE_AREA, 8.0), // invented
                  Map.entry(CraftBody.UNDERSIDE_AREA, 7.0), // invented
                  Map.entry(CraftBody.DOWNLOAD, 0.04), // invented
                  Map.entry(CraftBody.TAIL_ARM, 7.4), // invented
                  Map.entry(CraftLimits.MAXIMUM_COLLECTIVE, 19.0)))); // invented

  /** A heavy twin of about nine tonnes. */
  public static final Helicopter HEAVY =
      new Helicopter(
          "heavy",
          "Invented helicopter of about nine tonnes with two turbines; no real type.",
          RotationSense.COUNTER_CLOCKWISE,
          EngineKind.TURBINE,
          numbers(
              Map.ofEntries(
                  Map.entry(Helicopter.MASS, 8800.0), // invented
                  Map.entry(Helicopter.MINIMUM_MASS, 5500.0), // invented
                  Map.entry(Helicopter.MAXIMUM_MASS, 9600.0), // invented
                  Map.entry(Rotor.RADIUS, 8.2), // invented
                  Map.entry(Rotor.SOLIDITY, 0.095), // invented
                  Map.entry(Rotor.TIP_SPEED, 220.0), // invented
                  Map.entry(Rotor.TWIST, -12.0), // invented
                  Map.entry(Rotor.ROOT_CUTOUT, 0.2), // invented
                  Map.entry(Rotor.INERTIA, 11_000.0), // invented
                  Map.entry(Rotor.HUB_HEIGHT, 4.2), // invented
                  Map.entry(Helicopter.CONTINUOUS_POWER, 2350.0), // invented
                  Map.entry(Helicopter.TAKE_OFF_POWER, 2700.0), // invented
                  Map.entry(Helicopter.SEA_LEVEL_POWER, 3300.0), // invented
                  Map.entry(Helicopter.ENGINE_TIME, EngineKind.TURBINE.responseTime()), // assumed
                  Map.entry(CraftBody.FORWARD_AREA, 2.8), // invented
                  Map.entry(CraftBody.SIDE_AREA, 14.0), // invented
                  Map.entry(CraftBody.UNDERSIDE_AREA, 13.0), // invented
                  Map.entry(CraftBody.DOWNLOAD, 0.04), // invented
                  Map.entry(CraftBody.TAIL_ARM, 9.8), // invented
                  Map.entry(CraftLimits.MAXIMUM_COLLECTIVE, 20.0)))); // invented

  /** All four, lightest first. */
  public static final List<Helicopter> ALL = List.of(TRAINER, UTILITY, TWIN, HEAVY);

  private DemoCraft() {}

  /**
   * Finds a demo craft.
   *
   * @param name its name
   * @return the craft, or empty if none has that name
   */
  public static Optional<Helicopter> named(String name) {
    return ALL.stream().filter(craft -> craft.name().equals(name)).findFirst();
  }

  private static ParameterSet numbers(Map<Parameter, Double> changes) {
    ParameterSet numbers = Helicopter.STANDARD_NUMBERS;
    for (Parameter parameter : numbers.parameters()) {
      Double value = changes.get(parameter);
      if (value != null) {
        numbers = numbers.with(parameter, value);
      }
    }
    return numbers;
  }
}
