package io.github.ringstate.flight;

/**
 * A flight at one instant: the state, its rates, and what came up in working them out. Mutable and
 * used again for every instant, so that nothing is allocated while a flight is computed.
 */
public final class Motion implements Cockpit {

  private final EquationsOfMotion equations;
  private final double[] ownState = new double[State.SIZE];
  private final double[] ownRates = new double[State.SIZE];
  double[] state = ownState;
  double[] rates = ownRates;
  final Controls controls = new Controls();
  final double[] wind = new double[3];

  double time;
  double recognised = Double.NaN;
  double heldCollective = Double.NaN;
  double techniqueBegan;
  double phaseBegan;
  double sinHeading;
  double cosHeading;
  double forwardAirspeed;
  double sidewaysAirspeed;
  double groundSpeed;
  double sidewaysGroundSpeed;
  double edgewise;
  double axial;
  double inflowScale;
  double steadyOverScale;
  double thrust;
  double roughness;
  double rotorPower;
  double shaftPower;
  double enginePower;
  double inducedPower;
  double profilePower;
  double dragNose;
  double dragRight;
  double dragShaft;
  double side;
  double download;
  double perContinuousPower;
  double shortTimePower;
  double perWeight;
  double hoverInduced;
  double perHoverInduced;
  double perNominalRotorSpeed;
  double leastCollective;
  double hoverCollective;
  double hoverPitch;
  double hoverBank;
  int tailPush;

  Motion(EquationsOfMotion equations) {
    this.equations = equations;
  }

  /** Goes on with a copy of a state, and rates of its own. */
  void copy(double[] of) {
    System.arraycopy(of, 0, ownState, 0, State.SIZE);
    lend(ownState, ownRates);
  }

  /** Goes on with a state and rates that belong to somebody else. */
  void lend(double[] lentState, double[] lentRates) {
    state = lentState;
    rates = lentRates;
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
    equations.complete();
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
    equations.complete();
    return edgewise * perHoverInduced;
  }

  /**
   * Axial speed of the disc through the air, positive in climb.
   *
   * @return the speed, in units of the hover induced velocity at the craft's weight
   */
  public double axialOverHover() {
    equations.complete();
    return axial * perHoverInduced;
  }

  /**
   * Induced velocity.
   *
   * @return the velocity, in units of the hover induced velocity at the craft's weight
   */
  public double inducedOverHover() {
    return state[State.INDUCED] * perHoverInduced;
  }

  /**
   * Thrust along the shaft.
   *
   * @return the thrust, N
   */
  public double thrust() {
    equations.complete();
    return thrust;
  }

  /**
   * Power that the main rotor takes.
   *
   * @return the power, W; negative where the air drives it
   */
  public double rotorPower() {
    equations.complete();
    return rotorPower;
  }

  /**
   * Power that the main rotor, the tail rotor, gearbox and accessories take together.
   *
   * @return the power, W
   */
  public double shaftPower() {
    equations.complete();
    return shaftPower;
  }

  /**
   * Power that the engine gives.
   *
   * @return the power, W
   */
  public double enginePower() {
    equations.complete();
    return enginePower;
  }

  /**
   * Part of the main rotor's power that goes into the air as induced velocity and its losses.
   *
   * @return the power, W
   */
  public double inducedPower() {
    equations.complete();
    return inducedPower;
  }

  /**
   * Part of the main rotor's power that the drag of the blades takes.
   *
   * @return the power, W
   */
  public double profilePower() {
    equations.complete();
    return profilePower;
  }

  /**
   * Work of the body's drag on the craft.
   *
   * @return the power, W, over the ground; negative in still air
   */
  public double dragPower() {
    equations.complete();
    return overGround(dragNose, dragRight, dragShaft);
  }

  /**
   * Work of the tail rotor's side force on the craft.
   *
   * @return the power, W, over the ground
   */
  public double sidePower() {
    equations.complete();
    return overGround(0, side, 0);
  }

  /**
   * Work of the download on the craft.
   *
   * @return the power, W, over the ground; negative in climb
   */
  public double downloadPower() {
    equations.complete();
    return overGround(0, 0, -download);
  }

  /** Work of a force along nose, right side and shaft, over the ground. */
  private double overGround(double nose, double right, double shaft) {
    double sinPitch = Angle.sin(state[State.PITCH]);
    double cosPitch = Angle.cos(state[State.PITCH]);
    double sinBank = Angle.sin(state[State.BANK]);
    double cosBank = Angle.cos(state[State.BANK]);
    double ahead =
        Angle.cos(state[State.HEADING]) * state[State.SPEED_NORTH]
            + Angle.sin(state[State.HEADING]) * state[State.SPEED_EAST];
    double aside =
        Angle.cos(state[State.HEADING]) * state[State.SPEED_EAST]
            - Angle.sin(state[State.HEADING]) * state[State.SPEED_NORTH];
    double up = state[State.SPEED_UP];
    return nose * (cosPitch * ahead + sinPitch * up)
        + right * (sinBank * sinPitch * ahead + cosBank * aside - sinBank * cosPitch * up)
        + shaft * (-cosBank * sinPitch * ahead + sinBank * aside + cosBank * cosPitch * up);
  }

  /**
   * Hover induced velocity at the craft's weight.
   *
   * @return the velocity, m/s
   */
  public double hoverInduced() {
    return hoverInduced;
  }

  @Override
  public double sinceRecognition() {
    return time >= recognised ? time - recognised : -1;
  }

  @Override
  public double sincePhaseBegan() {
    return time - phaseBegan;
  }

  @Override
  public double sinceTechniqueBegan() {
    return time - techniqueBegan;
  }

  @Override
  public double height() {
    return state[State.UP];
  }

  @Override
  public double verticalSpeed() {
    return state[State.SPEED_UP];
  }

  @Override
  public double shownVerticalSpeed() {
    return state[State.SHOWN_VERTICAL_SPEED];
  }

  @Override
  public double verticalAcceleration() {
    equations.complete();
    return rates[State.SPEED_UP];
  }

  @Override
  public double forwardAirspeed() {
    return forwardAirspeed;
  }

  @Override
  public double sidewaysAirspeed() {
    return sidewaysAirspeed;
  }

  @Override
  public double groundSpeed() {
    return groundSpeed;
  }

  @Override
  public double sidewaysGroundSpeed() {
    return sidewaysGroundSpeed;
  }

  @Override
  public double pitch() {
    return state[State.PITCH];
  }

  @Override
  public double bank() {
    return state[State.BANK];
  }

  @Override
  public double heading() {
    return state[State.HEADING];
  }

  @Override
  public double collective() {
    return state[State.COLLECTIVE];
  }

  @Override
  public double power() {
    equations.complete();
    return shaftPower * perContinuousPower;
  }

  @Override
  public double shortTimePower() {
    return shortTimePower;
  }

  @Override
  public double rotorSpeed() {
    return state[State.ROTOR_SPEED] * perNominalRotorSpeed;
  }

  @Override
  public double loadFactor() {
    equations.complete();
    return thrust * perWeight;
  }

  @Override
  public double roughness() {
    equations.complete();
    return roughness;
  }

  @Override
  public double pitchRate() {
    return state[State.PITCH_RATE];
  }

  @Override
  public double bankRate() {
    return state[State.BANK_RATE];
  }

  @Override
  public double heldCollective() {
    return Double.isNaN(heldCollective) ? state[State.COLLECTIVE] : heldCollective;
  }

  @Override
  public double hoverCollective() {
    return hoverCollective;
  }

  @Override
  public double leastCollective() {
    return leastCollective;
  }

  @Override
  public double hoverPitch() {
    return hoverPitch;
  }

  @Override
  public double hoverBank() {
    return hoverBank;
  }

  @Override
  public int tailPush() {
    return tailPush;
  }
}
