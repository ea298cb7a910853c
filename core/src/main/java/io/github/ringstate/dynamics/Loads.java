package io.github.ringstate.dynamics;

/**
 * Forces and powers on a helicopter at one instant, as the terms of the equations of motion leave
 * them. Mutable and used again for every instant.
 */
public final class Loads {

  /** Speed through the air along the nose and to the right, m/s. */
  double alongNose;

  double alongRight;
  double axial;
  double edgewiseSquared;
  double edgewise;

  /** The velocity in whose units the inflow model was asked, m/s. */
  double inflowScale;

  /** Steady induced velocity away from the ground, in that unit. */
  double steadyOverScale;

  double thrust;
  double roughness;
  double thrustPower;
  double profilePower;
  double rotorPower;
  double shaftPower;
  double enginePower;

  double engineDemand;

  /** The gradient of steady flight, m/s, as in {@link State}. */
  double steadyGradientNose;

  double steadyGradientRight;

  double download;
  double side;
  double dragNose;
  double dragRight;
  double dragShaft;

  Loads() {}

  /**
   * Sets what follows from the rest of a state in steady flight: the power that the engine gives,
   * and the gradient of the inflow.
   *
   * @param state the state, in the order of {@link State}, of which these are the loads {@linkplain
   *     EquationsOfMotion#inBalance in balance}
   */
  public void settle(double[] state) {
    state[State.ENGINE] = engineDemand;
    state[State.GRADIENT_NOSE] = steadyGradientNose;
    state[State.GRADIENT_RIGHT] = steadyGradientRight;
  }

  /**
   * Axial speed of the disc through the air.
   *
   * @return the speed along the shaft, m/s, positive in climb
   */
  public double axial() {
    return axial;
  }

  /**
   * Edgewise speed of the disc through the air.
   *
   * @return the speed in the plane of the disc, m/s, not negative
   */
  public double edgewise() {
    return edgewise;
  }

  /**
   * Thrust along the shaft.
   *
   * @return the thrust, N
   */
  public double thrust() {
    return thrust;
  }

  /**
   * Power that the main rotor takes.
   *
   * @return the power, W; negative where the air drives it
   */
  public double rotorPower() {
    return rotorPower;
  }

  /**
   * Power that the main rotor, the tail rotor, gearbox and accessories take together.
   *
   * @return the power, W
   */
  public double shaftPower() {
    return shaftPower;
  }

  /**
   * Power that the engine gives.
   *
   * @return the power, W
   */
  public double enginePower() {
    return enginePower;
  }

  /**
   * Power that the governor asks of the engine.
   *
   * @return the power, over the greatest that engine and drive train give; what {@link
   *     State#ENGINE} is in steady flight
   */
  public double engineDemand() {
    return engineDemand;
  }

  /**
   * Part of the main rotor's power that goes into the air as induced velocity and its losses.
   *
   * @return the power, W
   */
  public double inducedPower() {
    return thrustPower - thrust * axial;
  }

  /**
   * Part of the main rotor's power that the drag of the blades takes.
   *
   * @return the power, W
   */
  public double profilePower() {
    return profilePower;
  }
}
