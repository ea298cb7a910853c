package io.github.ringstate.dynamics;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.NotFiniteException;

/**
 * A flight at one instant: the state, the speeds through the air, and, worked out when one of them
 * is asked for, {@link Loads} and rates. Most events need the state alone, and forces are nine
 * tenths of the work.
 *
 * <p>Mutable and used again for every instant, so that nothing is allocated while a flight is
 * computed.
 */
public final class Motion {

  private final Workings workings;
  private final WindField wind;
  private final double hoverInduced;
  private final double inverseHoverInduced;
  private final double inverseWeight;
  private final double inverseNominalRotorSpeed;
  private final double inverseContinuousPower;
  private final double takeOffPower;
  private final double[] windSpeed = new double[3];
  private final double[] ownRates = new double[State.SIZE];
  final Axes axes = new Axes();
  final Loads loads = new Loads();
  double[] state = new double[State.SIZE];
  private double[] rates = ownRates;
  double time;
  private boolean complete;
  private double sinHeading;
  private double cosHeading;
  private double forwardAirspeed;
  private double sidewaysAirspeed;
  private double groundSpeed;
  private double sidewaysGroundSpeed;

  Motion(Helicopter craft, Air air, WindField wind, double hoverInduced, Workings workings) {
    this.wind = wind;
    this.hoverInduced = hoverInduced;
    this.workings = workings;
    inverseHoverInduced = 1 / hoverInduced;
    inverseWeight = 1 / craft.weight();
    inverseNominalRotorSpeed = 1 / craft.rotor().nominalSpeed();
    inverseContinuousPower = 1 / craft.continuousPower(air);
    takeOffPower = craft.takeOffPower(air) / craft.continuousPower(air);
  }

  /** Looks at an instant, with rates of its own. */
  void look(double when, double[] at) {
    look(when, at, ownRates);
  }

  /** Looks at an instant on a state and rates that belong to somebody else. */
  void look(double when, double[] at, double[] itsRates) {
    time = when;
    state = at;
    rates = itsRates;
    complete = false;
    sinHeading = Angle.sin(at[State.HEADING]);
    cosHeading = Angle.cos(at[State.HEADING]);
    wind.velocity(when, at[State.NORTH], at[State.EAST], at[State.UP], windSpeed);
    double sum = windSpeed[0] + windSpeed[1] + windSpeed[2];
    if (!(Math.abs(sum) < Double.POSITIVE_INFINITY)) {
      throw new NotFiniteException(wind, "the velocity in the wind", sum);
    }
    double north = at[State.SPEED_NORTH];
    double east = at[State.SPEED_EAST];
    double airNorth = north - windSpeed[0];
    double airEast = east - windSpeed[1];
    forwardAirspeed = airNorth * cosHeading + airEast * sinHeading;
    sidewaysAirspeed = airEast * cosHeading - airNorth * sinHeading;
    groundSpeed = north * cosHeading + east * sinHeading;
    sidewaysGroundSpeed = east * cosHeading - north * sinHeading;
  }

  /** Turns the axes and begins the loads; returns where the terms add their rates. */
  double[] complete() {
    complete = true;
    Axes to = axes;
    to.turn(sinHeading, cosHeading, state[State.PITCH], state[State.BANK]);
    double north = state[State.SPEED_NORTH] - windSpeed[0];
    double east = state[State.SPEED_EAST] - windSpeed[1];
    double up = state[State.SPEED_UP] - windSpeed[2];
    double nose = north * to.noseN + east * to.noseE + up * to.noseU;
    double right = north * to.rightN + east * to.rightE + up * to.rightU;
    loads.axial = north * to.shaftN + east * to.shaftE + up * to.shaftU;
    loads.alongNose = nose;
    loads.alongRight = right;
    loads.edgewiseSquared = nose * nose + right * right;
    loads.edgewise = Math.sqrt(loads.edgewiseSquared);
    return rates;
  }

  /**
   * Forces and powers at this instant.
   *
   * @return the loads, valid as long as this motion
   */
  public Loads loads() {
    if (!complete) {
      workings.complete();
    }
    return loads;
  }

  /**
   * Time since the flight began.
   *
   * @return the time, s
   */
  public double time() {
    return time;
  }

  /**
   * One quantity of the state.
   *
   * @param index a place named in {@link State}
   * @return its value, in SI units
   */
  public double state(int index) {
    return state[index];
  }

  /**
   * The rate of one quantity of the state.
   *
   * @param index a place named in {@link State}
   * @return its rate, in SI units per second
   */
  public double rate(int index) {
    loads();
    return rates[index];
  }

  /**
   * Horizontal speed through the air.
   *
   * @return the speed, m/s
   */
  public double airspeed() {
    return Math.sqrt(forwardAirspeed * forwardAirspeed + sidewaysAirspeed * sidewaysAirspeed);
  }

  /**
   * Edgewise speed of the disc through the air.
   *
   * @return the speed, in units of the hover induced velocity at the craft's weight
   */
  public double edgewiseOverHover() {
    return loads().edgewise * inverseHoverInduced;
  }

  /**
   * Axial speed of the disc through the air, positive in climb.
   *
   * @return the speed, in units of the hover induced velocity at the craft's weight
   */
  public double axialOverHover() {
    return loads().axial * inverseHoverInduced;
  }

  /**
   * Induced velocity.
   *
   * @return the velocity, in units of the hover induced velocity at the craft's weight
   */
  public double inducedOverHover() {
    return state[State.INDUCED] * inverseHoverInduced;
  }

  /**
   * Work of the body's drag on the craft.
   *
   * @return the power, W, over the ground; negative in still air
   */
  public double dragPower() {
    return overGround(loads().dragNose, loads.dragRight, loads.dragShaft);
  }

  /**
   * Work of the tail rotor's side force on the craft.
   *
   * @return the power, W, over the ground
   */
  public double sidePower() {
    return overGround(0, loads().side, 0);
  }

  /**
   * Work of the download on the craft.
   *
   * @return the power, W, over the ground; negative in climb
   */
  public double downloadPower() {
    return overGround(0, 0, -loads().download);
  }

  /** Work of a force along nose, right side and shaft, over the ground. */
  private double overGround(double nose, double right, double shaft) {
    return (nose * axes.noseN + right * axes.rightN + shaft * axes.shaftN)
            * state[State.SPEED_NORTH]
        + (nose * axes.noseE + right * axes.rightE + shaft * axes.shaftE) * state[State.SPEED_EAST]
        + (nose * axes.noseU + right * axes.rightU + shaft * axes.shaftU) * state[State.SPEED_UP];
  }

  /**
   * Hover induced velocity at the craft's weight.
   *
   * @return the velocity, m/s
   */
  public double hoverInduced() {
    return hoverInduced;
  }

  /**
   * Height: above the ground where there is ground, else above where the flight began.
   *
   * @return the height, m
   */
  public double height() {
    return state[State.UP];
  }

  /**
   * Vertical speed as it is.
   *
   * @return the speed, m/s, positive up
   */
  public double verticalSpeed() {
    return state[State.SPEED_UP];
  }

  /**
   * Vertical acceleration as the body feels it.
   *
   * @return the acceleration, m/s2, positive up, zero in steady flight
   */
  public double verticalAcceleration() {
    return rate(State.SPEED_UP);
  }

  /**
   * Airspeed along the nose.
   *
   * @return the horizontal speed through the air in the direction of the heading, m/s
   */
  public double forwardAirspeed() {
    return forwardAirspeed;
  }

  /**
   * Airspeed to the right.
   *
   * @return the horizontal speed through the air to the right of the heading, m/s
   */
  public double sidewaysAirspeed() {
    return sidewaysAirspeed;
  }

  /**
   * Speed over the ground along the nose.
   *
   * @return the speed, m/s
   */
  public double groundSpeed() {
    return groundSpeed;
  }

  /**
   * Speed over the ground to the right.
   *
   * @return the speed to the right of the heading, m/s
   */
  public double sidewaysGroundSpeed() {
    return sidewaysGroundSpeed;
  }

  /**
   * Pitch attitude.
   *
   * @return the attitude, rad, positive nose up
   */
  public double pitch() {
    return state[State.PITCH];
  }

  /**
   * Bank.
   *
   * @return the bank, rad, positive to the right
   */
  public double bank() {
    return state[State.BANK];
  }

  /**
   * Heading.
   *
   * @return the heading, rad, clockwise from north
   */
  public double heading() {
    return state[State.HEADING];
  }

  /**
   * Collective pitch.
   *
   * @return blade pitch at three quarters of the radius, rad
   */
  public double collective() {
    return state[State.COLLECTIVE];
  }

  /**
   * Power that rotors and gearbox take; more than the engine gives while the rotor slows.
   *
   * @return the power over the power that may be used without limit of time
   */
  public double power() {
    return loads().shaftPower * inverseContinuousPower;
  }

  /**
   * The most power that the engine can give for minutes.
   *
   * @return the power over the power that may be used without limit of time
   */
  public double takeOffPower() {
    return takeOffPower;
  }

  /**
   * Rotor speed.
   *
   * @return the speed over its nominal value
   */
  public double rotorSpeed() {
    return state[State.ROTOR_SPEED] * inverseNominalRotorSpeed;
  }

  /**
   * Thrust of the rotor, as the body feels it.
   *
   * @return the thrust over the craft's weight
   */
  public double loadFactor() {
    return loads().thrust * inverseWeight;
  }

  /**
   * How much the thrust fluctuates, as the body feels it.
   *
   * @return standard deviation of the thrust over its mean; zero where nothing disturbs it
   */
  public double roughness() {
    return loads().roughness;
  }

  /**
   * Rate at which a change of the induced velocity alone would decay: the lag of the inflow,
   * quickened because more inflow means less thrust, and less thrust a different steady inflow. It
   * is the stiffest thing in the equations; an integrator that knows it need not follow it step by
   * step. Within some per cent; where the blades stall the lag alone is slower.
   *
   * @return the rate, 1/s, not negative
   */
  public double inflowDecay() {
    loads();
    return workings.inflowDecay();
  }

  /**
   * Whether a faster sink draws more air down through the disc rather than less, so that the blades
   * lift less and the sink grows by itself.
   *
   * @return true if the total inflow, positive down through the disc, falls with the axial speed,
   *     positive in climb
   */
  public boolean sinkFeedsItself() {
    loads();
    return workings.sinkFeedsItself();
  }
}
