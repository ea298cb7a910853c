package io.github.ringstate.instructor.manual;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.inflow.RingStateInflow;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** What the model makes of a craft in steady flight out of ground effect, in calm air. */
final class Performance {

  /** Steps in which a change of sign is looked for. */
  private static final int STEPS = 25;

  /** Halvings of a bracket: from hundreds of metres to millimetres. */
  private static final int HALVINGS = 20;

  /** Pressure altitudes between which a ceiling is looked for, m. */
  private static final double LOWEST = -300;

  private static final double HIGHEST = 7000;

  /** Vertical speeds between which climb and autorotation are looked for, m/s. */
  private static final double FASTEST = 25;

  private Performance() {}

  /**
   * Pressure altitude up to which take-off power holds a hover.
   *
   * @param craft the craft
   * @param mass its mass, kg
   * @param warmer how much warmer the air is than the standard atmosphere, K
   * @return the altitude, m; empty if it holds none, or is not found below 7000 m
   */
  static OptionalDouble ceiling(Helicopter craft, double mass, double warmer) {
    Helicopter loaded = craft.with(Helicopter.MASS, mass);
    return root(
        LOWEST,
        HIGHEST,
        altitude -> {
          Air standard = StandardAtmosphere.at(altitude);
          Air air = StandardAtmosphere.withTemperature(altitude, standard.temperature() + warmer);
          return loaded.takeOffPower(air) - power(loaded, air, 0, 0);
        });
  }

  /**
   * Rate of climb with continuous power at sea level on a standard day.
   *
   * @param craft the craft
   * @param airspeed the airspeed, m/s
   * @return the rate, m/s; empty if there is no climb
   */
  static OptionalDouble climb(Helicopter craft, double airspeed) {
    Air air = StandardAtmosphere.at(0);
    return root(
        0, FASTEST, climb -> craft.continuousPower(air) - power(craft, air, airspeed, climb));
  }

  /**
   * Rate of descent at which the rotor needs no power, at sea level on a standard day.
   *
   * @param craft the craft
   * @param airspeed the airspeed, m/s
   * @return the rate, m/s, positive down; empty if it is not found
   */
  static OptionalDouble autorotation(Helicopter craft, double airspeed) {
    Air air = StandardAtmosphere.at(0);
    return root(0, FASTEST, descent -> power(craft, air, airspeed, -descent));
  }

  /** Shaft power, W; more than there is where the rotor cannot carry the craft. */
  private static double power(Helicopter craft, Air air, double airspeed, double climb) {
    EquationsOfMotion motion =
        new EquationsOfMotion(craft, air, Wind.CALM, RingStateInflow.standard(), false);
    try {
      Trim trim = Trim.find(motion, airspeed, climb);
      return motion.at(0, trim.state(motion, airspeed, climb)).loads().shaftPower();
    } catch (NoSteadyFlightException stalled) {
      return Double.POSITIVE_INFINITY;
    }
  }

  /** Where a falling quantity first goes through zero; it may be none far beyond. */
  private static OptionalDouble root(double from, double to, DoubleUnaryOperator falling) {
    if (!(falling.applyAsDouble(from) > 0)) {
      return OptionalDouble.empty();
    }
    double low = from;
    for (int i = 1; i <= STEPS; i++) {
      double high = from + (to - from) * i / STEPS;
      if (!(falling.applyAsDouble(high) > 0)) {
        return OptionalDouble.of(between(low, high, falling));
      }
      low = high;
    }
    return OptionalDouble.empty();
  }

  private static double between(double from, double to, DoubleUnaryOperator falling) {
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (falling.applyAsDouble(middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
