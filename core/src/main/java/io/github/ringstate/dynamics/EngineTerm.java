package io.github.ringstate.dynamics;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.SoftLimit;

/**
 * Engine, rotor speed and tail rotor.
 *
 * <p>The governor asks for the power that the rotor takes and for what restores the rotor's speed;
 * the engine gives at most its take-off power in this air and never less than nothing (free-wheel),
 * both corners rounded off. What is missing the rotor takes from its own inertia. The engine
 * answers at once; the time it needs is in the governor's time constant. The tail rotor balances
 * the torque that the engine puts into the main rotor, and pushes the craft aside.
 */
final class EngineTerm implements Term {

  /** Over what the engine's limits are rounded off, to either side, over its greatest power. */
  private static final double POWER_ROUNDING = 0.04;

  private final double transmissionLoss;
  private final double greatestPower;
  private final double powerRounding;
  private final double governorGain;
  private final double inverseInertia;
  private final double nominalSpeed;
  private final double sidePerTorque;

  EngineTerm(Helicopter craft, double greatestPower) {
    this.greatestPower = greatestPower;
    transmissionLoss = craft.si(Helicopter.TRANSMISSION_AND_TAIL_ROTOR_POWER);
    powerRounding = POWER_ROUNDING * greatestPower;
    nominalSpeed = craft.rotor().nominalSpeed();
    governorGain = craft.rotor().inertia() * nominalSpeed / craft.si(Helicopter.GOVERNOR_TIME);
    inverseInertia = 1 / craft.rotor().inertia();
    sidePerTorque =
        craft.sense().tailPush() / ((1 + transmissionLoss) * craft.si(Helicopter.TAIL_ARM));
  }

  @Override
  public void add(Motion at, double[] rates) {
    Loads loads = at.loads;
    double rotorSpeed = at.state[State.ROTOR_SPEED];
    double rotorPower = loads.rotorPower;
    double shaftPower = rotorPower + transmissionLoss * SoftLimit.size(rotorPower, powerRounding);
    double enginePower = given(shaftPower + governorGain * (nominalSpeed - rotorSpeed));
    double inverseRotorSpeed = 1 / rotorSpeed;
    rates[State.ROTOR_SPEED] = (enginePower - shaftPower) * inverseRotorSpeed * inverseInertia;
    loads.shaftPower = shaftPower;
    loads.enginePower = enginePower;
    loads.side = sidePerTorque * enginePower * inverseRotorSpeed;
  }

  /** The power the engine gives when asked: between nothing and its greatest, rounded off. */
  private double given(double wanted) {
    double capped = wanted - SoftLimit.positive(wanted - greatestPower, powerRounding);
    return SoftLimit.positive(capped, powerRounding);
  }
}
