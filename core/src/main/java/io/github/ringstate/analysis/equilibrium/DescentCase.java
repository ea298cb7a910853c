package io.github.ringstate.analysis.equilibrium;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;

/**
 * Whose steady descents are looked for.
 *
 * @param craft the helicopter
 * @param air the air
 * @param inflow the steady inflow
 * @param airspeed the airspeed along the nose that is held, m/s, finite and not negative
 */
public record DescentCase(Helicopter craft, Air air, InflowModel inflow, double airspeed) {

  /** Checks the airspeed. */
  public DescentCase {
    if (!(airspeed >= 0 && airspeed < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "the airspeed must be finite and not negative, not " + airspeed + " m/s");
    }
  }

  /**
   * Vertical descents at sea level on a standard day, with the ring-state inflow.
   *
   * @param craft the helicopter
   * @return the case
   */
  public static DescentCase of(Helicopter craft) {
    return new DescentCase(craft, StandardAtmosphere.at(0), RingStateInflow.standard(), 0);
  }

  /**
   * The same with another airspeed.
   *
   * @param other the airspeed, m/s, not negative
   * @return the changed case
   */
  public DescentCase withAirspeed(double other) {
    return new DescentCase(craft, air, inflow, other);
  }

  /** The equations of motion at a mass, in calm air away from the ground. */
  EquationsOfMotion equations(double mass) {
    Helicopter loaded =
        mass == craft.mass()
            ? craft
            : craft.with(Helicopter.MASS, Helicopter.MASS.unit().fromSi(mass));
    return new EquationsOfMotion(loaded, air, Wind.CALM, inflow, false);
  }

  /** The equations of motion. */
  EquationsOfMotion equations() {
    return equations(craft.mass());
  }
}
