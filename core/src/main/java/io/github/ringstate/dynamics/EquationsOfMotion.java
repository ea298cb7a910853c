package io.github.ringstate.dynamics;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.integrate.Equations;
import io.github.ringstate.quantity.NotFiniteException;

/**
 * The equations of motion of a point-mass helicopter in three dimensions, as a sum of terms: rotor
 * and induced velocity, engine and rotor speed, body, controls, indicator. They are worked out in
 * that order; each finds what the ones before it left in the {@link Loads}.
 *
 * <p>The limits of rates, accelerations and power are bent in by {@link
 * io.github.ringstate.quantity.SoftLimit}, so the right-hand side is smooth wherever the commands,
 * the wind and the inflow model are.
 *
 * <p>The air's density is that of the start: over the few hundred feet of an encounter it changes
 * by about one per cent.
 *
 * <p>An instance works on one {@link Motion} of its own and is therefore not safe to share between
 * threads; building one is cheap beside flying it.
 */
public final class EquationsOfMotion implements Equations<Motion> {

  private final Helicopter craft;
  private final Air air;
  private final WindField wind;
  private final InflowModel inflow;
  private final RotorTerm rotor;
  private final EngineTerm engine;
  private final BodyTerm body;
  private final ControlTerm controls;
  private final IndicatorTerm indicator;
  private final Motion motion;

  /**
   * Sets the equations up for steady thrust.
   *
   * @param craft the helicopter
   * @param air the air at the start
   * @param wind the wind
   * @param inflow the steady inflow
   * @param ground whether height zero is ground, for ground effect
   */
  public EquationsOfMotion(
      Helicopter craft, Air air, WindField wind, InflowModel inflow, boolean ground) {
    this(craft, air, wind, inflow, ground, ThrustDisturbance.NONE);
  }

  /**
   * Sets the equations up.
   *
   * @param craft the helicopter
   * @param air the air at the start
   * @param wind the wind
   * @param inflow the steady inflow
   * @param ground whether height zero is ground, for ground effect
   * @param shaking how the thrust fluctuates
   */
  public EquationsOfMotion(
      Helicopter craft,
      Air air,
      WindField wind,
      InflowModel inflow,
      boolean ground,
      ThrustDisturbance shaking) {
    this.craft = craft;
    this.air = air;
    this.wind = wind;
    this.inflow = inflow;
    double hoverInduced = craft.hoverInducedVelocity(air);
    rotor = new RotorTerm(craft, air.density(), hoverInduced, inflow, ground, shaking);
    engine = new EngineTerm(craft, craft.maximumPower(air));
    body = new BodyTerm(craft, air.density());
    controls = new ControlTerm(craft);
    indicator = new IndicatorTerm(craft);
    motion = new Motion(craft, air, wind, hoverInduced, new Terms());
  }

  /**
   * The helicopter.
   *
   * @return the craft
   */
  public Helicopter craft() {
    return craft;
  }

  /**
   * The air at the start.
   *
   * @return the air
   */
  public Air air() {
    return air;
  }

  /**
   * The wind.
   *
   * @return the wind over the ground
   */
  public WindField wind() {
    return wind;
  }

  /**
   * The wind at the origin of the earth frame at time zero, where trims are looked for.
   *
   * @return the velocity of the air over the ground, m/s: north, east, up; a new array
   * @throws NotFiniteException if the wind gives what is not a finite number
   */
  public double[] windAtStart() {
    double[] velocity = new double[3];
    wind.velocity(0, 0, 0, 0, velocity);
    NotFiniteException.check(
        velocity[0] + velocity[1] + velocity[2], "the velocity at the start in the wind", wind);
    return velocity;
  }

  /** Sets the speeds over the ground of a state to those through the air in that wind, m/s. */
  void inAir(double[] state, double forward, double sideways, double verticalSpeed) {
    double[] velocity = windAtStart();
    state[State.SPEED_NORTH] = forward + velocity[0];
    state[State.SPEED_EAST] = sideways + velocity[1];
    state[State.SPEED_UP] = verticalSpeed + velocity[2];
  }

  /**
   * The steady inflow.
   *
   * @return the model
   */
  public InflowModel inflow() {
    return inflow;
  }

  /**
   * Hover induced velocity at the craft's weight.
   *
   * @return the velocity, m/s
   */
  public double hoverInduced() {
    return motion.hoverInduced();
  }

  /**
   * Says who commands the controls from here on; until it is said, nothing is commanded, and
   * attitude and collective stay.
   *
   * @param commander who commands
   */
  public void commandedBy(Commander commander) {
    controls.commandedBy(commander);
  }

  /**
   * The motion at the instant that was looked at last: one object, used again for every instant.
   *
   * @return the motion
   */
  public Motion motion() {
    return motion;
  }

  @Override
  public int dimension() {
    return State.SIZE;
  }

  /**
   * {@inheritDoc}
   *
   * @param time time since the flight began, s
   * @param state the state, in the order of {@link State}, SI units
   * @param rates where the rates of the state are written, in the same order, SI units per second
   */
  @Override
  public Motion rates(double time, double[] state, double[] rates) {
    motion.look(time, state, rates);
    complete();
    return motion;
  }

  /**
   * {@inheritDoc} Loads, commands and rates are worked out when the motion is asked for one of
   * them.
   *
   * @param time time since the flight began, s
   * @param state the state, in the order of {@link State}, SI units
   */
  @Override
  public Motion at(double time, double[] state) {
    motion.look(time, state);
    return motion;
  }

  /**
   * The motion at time zero with an engine that gives what is asked of it, and a gradient of the
   * inflow, if it has one, as it is in steady flight.
   *
   * @param state the state, in the order of {@link State}, SI units
   * @return the motion, worked out, valid until the next use
   */
  public Motion inBalance(double[] state) {
    engine.balance(true);
    rotor.balance(true);
    motion.look(0, state);
    complete();
    engine.balance(false);
    rotor.balance(false);
    return motion;
  }

  /** The terms in their order, for the motion that is looked at. */
  private final class Terms implements Workings {

    @Override
    public void complete() {
      EquationsOfMotion.this.complete();
    }

    @Override
    public double inflowDecay() {
      return rotor.inflowDecay(motion);
    }

    @Override
    public boolean sinkFeedsItself() {
      return rotor.sinkFeedsItself(motion);
    }
  }

  private void complete() {
    double[] rates = motion.complete();
    rotor.add(motion, rates);
    engine.add(motion, rates);
    body.add(motion, rates);
    indicator.add(motion, rates);
    controls.add(motion, rates);
  }
}
