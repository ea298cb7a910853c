package io.github.ringstate.dynamics;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.SoftLimit;

/**
 * Engine, rotor speed and tail rotor.
 *
 * <p>The governor asks for the power that the rotor takes and for what restores the rotor's speed,
 * at most what engine and drive train give in this air and never less than nothing (free-wheel),
 * both corners rounded off. The engine follows with a time constant. What is missing the rotor
 * takes from its own inertia. The tail rotor balances the torque that the engine puts into the main
 * rotor, and pushes the craft aside.
 */
final class EngineTerm implements Term {

  /** Over what the engine's limits are rounded off, to either side, over its greatest power. */
  private static final double POWER_ROUNDING = 0.04;

  private final double transmissionLoss;
  private final double maximumPower;
  private final double inverseMaximumPower;
  private final double inverseTime;
  private final double powerRounding;
  private final double governorGain;
  private final double inverseInertia;
  private final double nominalSpeed;
  private final double sidePerTorque;
  private boolean balanced;

  EngineTerm(Helicopter craft, double maximumPower) {
    this.maximumPower = maximumPower;
    inverseMaximumPower = 1 / maximumPower;
    double time = craft.si(Helicopter.ENGINE_TIME);
    inverseTime = time > 0 ? 1 / time : 0;
    transmissionLoss = craft.si(Helicopter.TRANSMISSION_AND_TAIL_ROTOR_POWER);
    powerRounding = POWER_ROUNDING * maximumPower;
    nominalSpeed = craft.rotor().nominalSpeed();
    governorGain = craft.rotor().inertia() * nominalSpeed / craft.si(Helicopter.GOVERNOR_TIME);
    inverseInertia = 1 / craft.rotor().inertia();
    sidePerTorque =
        craft.sense().tailPush() / ((1 + transmissionLoss) * craft.si(CraftBody.TAIL_ARM));
  }

  /** Says whether the engine gives what is asked of it, as it does in steady flight. */
  void balance(boolean whether) {
    balanced = whether;
  }

  @Override
  public void add(Motion at, double[] rates) {
    Loads loads = at.loads;
    double rotorSpeed = at.state[State.ROTOR_SPEED];
    double rotorPower = loads.rotorPower;
    double shaftPower = rotorPower + transmissionLoss * SoftLimit.size(rotorPower, powerRounding);
    double demand = given(shaftPower + governorGain * (nominalSpeed - rotorSpeed));
    double enginePower = demand;
    double change = 0;
    if (inverseTime > 0 && !balanced) {
      enginePower = maximumPower * at.state[State.ENGINE];
      change = (demand - enginePower) * inverseMaximumPower * inverseTime;
    }
    rates[State.ENGINE] = change;
    double inverseRotorSpeed = 1 / rotorSpeed;
    rates[State.ROTOR_SPEED] = (enginePower - shaftPower) * inverseRotorSpeed * inverseInertia;
    loads.shaftPower = shaftPower;
    loads.enginePower = enginePower;
    loads.engineDemand = demand * inverseMaximumPower;
    loads.side = sidePerTorque * enginePower * inverseRotorSpeed;
  }

  /** The power the engine gives when asked: between nothing and its greatest, rounded off. */
  private double given(double wanted) {
    double capped = wanted - SoftLimit.positive(wanted - maximumPower, powerRounding);
    return SoftLimit.positive(capped, powerRounding);
  }
}
