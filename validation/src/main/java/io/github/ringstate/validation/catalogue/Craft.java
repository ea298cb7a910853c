package io.github.ringstate.validation.catalogue;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.rotor.BladeDrag;
import io.github.ringstate.rotor.Rotor;
import java.util.List;

/**
 * A demo craft at sea level on a standard day: its numbers as they are declared, and the equations
 * of motion of the craft under test, which may have been spoilt.
 */
record Craft(Helicopter declared, EquationsOfMotion motion) {

  static Craft of(Models models, Helicopter declared, InflowModel inflow) {
    Air air = models.air(0);
    return new Craft(
        declared, new EquationsOfMotion(models.craft(declared), air, Wind.CALM, inflow, false));
  }

  /** A demo craft in the ring-state model. */
  static Craft of(Models models, Helicopter declared) {
    return of(models, declared, models.ring());
  }

  /** The demo craft in the ring-state model. */
  static List<Craft> all(Models models) {
    return DemoCraft.ALL.stream().map(declared -> of(models, declared)).toList();
  }

  /** An encounter of a craft with the ring-state model, as yet in its standard air and entry. */
  static Encounter encounter(Models models, Helicopter declared) {
    return Encounter.of(models.craft(declared))
        .withInflow(models.ring(), new HeaveDamping(models.ring()));
  }

  /** The motion in steady vertical flight, its blades still. */
  Motion vertical(double verticalSpeed) {
    return motion.at(0, trimmed(verticalSpeed));
  }

  /** The state of steady vertical flight. */
  double[] trimmed(double verticalSpeed) {
    return Trim.find(motion, 0, verticalSpeed).state(motion, 0, verticalSpeed);
  }

  double si(Parameter parameter) {
    return declared.si(parameter);
  }

  double area() {
    return Math.PI * si(Rotor.RADIUS) * si(Rotor.RADIUS);
  }

  /** Density at sea level on a standard day, kg/m3, by definition. */
  static double density() {
    return 1.225;
  }

  /** Hover induced velocity of a thrust, m/s. */
  double hoverInduced(double thrust) {
    return Math.sqrt(thrust / (2 * density() * area()));
  }

  /**
   * Profile power without edgewise speed, s cd / 8 rho A Vtip^3, W, the mean drag coefficient by
   * Bailey's polar for a blade of ideal twist.
   */
  double profilePower(double thrust) {
    double tip = si(Rotor.TIP_SPEED);
    double loading = thrust / (density() * area() * tip * tip * si(Rotor.SOLIDITY));
    double drag = si(BladeDrag.PROFILE_DRAG) + polar(loading) - polar(0.07);
    return si(Rotor.SOLIDITY) * drag / 8 * density() * area() * Math.pow(tip, 3);
  }

  /**
   * What of the mean drag coefficient goes with blade loading: 8 times the torque 2 d1 (CT/s) / (3
   * a) + 4 d2 (CT/s)^2 / a^2, the coefficients as published.
   */
  private double polar(double loading) {
    double attack = 2 * loading / si(Rotor.LIFT_SLOPE);
    return 8 * (-0.0216 * attack / 3 + 0.4 * attack * attack);
  }

  String name() {
    return declared.name();
  }
}
