package io.github.ringstate.flight;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.quantity.SoftLimit;
import io.github.ringstate.rotor.GroundEffect;
import io.github.ringstate.rotor.Rotor;
import java.util.Arrays;

/**
 * The equations of motion of a point-mass helicopter in three dimensions, in one place.
 *
 * <p>Forces: thrust along the shaft less the download of the slipstream on the body; drag of three
 * flat plates along the body's axes; the side force of the tail rotor, which balances the torque
 * that the engine puts into the main rotor; weight. The shaft is fixed to the body, so the disc
 * tilts with it.
 *
 * <p>Inflow: the induced velocity follows, with the lag of the apparent mass, the value that the
 * inflow model gives at this thrust; speeds are handed to the model in units of the hover induced
 * velocity of the thrust at that instant. A thrust below a fiftieth of the weight, or downward,
 * counts for that scale as about a fiftieth, so that the scale never vanishes.
 *
 * <p>Engine and rotor speed: the governor asks for the power that the rotor takes and for what
 * restores the rotor's speed; the engine gives at most its short-time power in this air and never
 * less than nothing (free-wheel), both corners rounded off. What is missing the rotor takes from
 * its own inertia. The engine answers at once; the time it needs is in the governor's time
 * constant.
 *
 * <p>Attitude and collective follow what the pilot commands, at limited rates and (attitude)
 * accelerations. Every limit is a {@link SoftLimit}, so the right-hand side is smooth.
 *
 * <p>The air's density is that of the start: over the few hundred feet of an encounter it changes
 * by about one per cent.
 *
 * <p>An instance works on one {@link Motion} of its own and is therefore not safe to share between
 * threads; building one is cheap beside flying it.
 */
public final class EquationsOfMotion {

  /**
   * One over the time in which an error of attitude is corrected, 1/s (assumed: a pilot's brisk
   * correction).
   */
  private static final double PER_ATTITUDE_TIME = 1 / 0.35;

  /** One over the time in which an error of attitude rate is corrected, 1/s (assumed). */
  private static final double PER_RATE_TIME = 1 / 0.12;

  /** One over the time in which an error of collective is corrected, 1/s (assumed). */
  private static final double PER_COLLECTIVE_TIME = 1 / 0.15;

  /** Over what the engine's limits are rounded off, to either side, over its greatest power. */
  private static final double POWER_ROUNDING = 0.04;

  /** Thrust over weight below which the scale of the inflow falls no further (assumed). */
  private static final double LEAST_SCALE_THRUST = 0.02;

  /** Part by which the scale of the inflow is changed to see what depends on it. */
  private static final double SCALE_DIFFERENCE = 1e-3;

  private static final ControlLaw NOTHING_COMMANDED = (seen, controls) -> {};

  private final Helicopter craft;
  private final Air air;
  private final WindField wind;
  private final InflowModel inflow;
  private final boolean ground;
  private final ThrustDisturbance shaking;
  private final Rotor rotor;
  private final double density;
  private final double perMass;
  private final double weight;
  private final double leastScaleThrust;
  private final double forwardArea;
  private final double sideArea;
  private final double undersideArea;
  private final double download;
  private final double sidePerTorque;
  private final double powerLoss;
  private final double greatestPower;
  private final double powerRounding;
  private final double governorGain;
  private final double perInertia;
  private final double nominalSpeed;
  private final double leastCollective;
  private final double greatestCollective;
  private final double collectiveRate;
  private final double pitchLimit;
  private final double bankLimit;
  private final double pitchRate;
  private final double bankRate;
  private final double yawRate;
  private final double pitchAcceleration;
  private final double bankAcceleration;
  private final double perShownLag;
  private final double perTwiceDensityArea;
  private final double hoverInduced;
  private final double perHover;
  private final Motion motion = new Motion(this);
  private ControlLaw lastLaw = NOTHING_COMMANDED;
  private boolean complete;

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
    this.ground = ground;
    this.shaking = shaking;
    rotor = craft.rotor();
    density = air.density();
    perMass = 1 / craft.mass();
    weight = craft.weight();
    leastScaleThrust = LEAST_SCALE_THRUST * weight;
    forwardArea = craft.si(Helicopter.FORWARD_AREA);
    sideArea = craft.si(Helicopter.SIDE_AREA);
    undersideArea = craft.si(Helicopter.UNDERSIDE_AREA);
    download = craft.si(Helicopter.DOWNLOAD);
    powerLoss = craft.si(Helicopter.POWER_LOSS);
    greatestPower = craft.shortTimePower(air);
    powerRounding = POWER_ROUNDING * greatestPower;
    nominalSpeed = rotor.nominalSpeed();
    governorGain = rotor.inertia() * nominalSpeed / craft.si(Helicopter.GOVERNOR_TIME);
    perInertia = 1 / rotor.inertia();
    sidePerTorque = craft.sense().tailPush() / ((1 + powerLoss) * craft.si(Helicopter.TAIL_ARM));
    leastCollective = craft.si(Helicopter.LEAST_COLLECTIVE);
    greatestCollective = craft.si(Helicopter.GREATEST_COLLECTIVE);
    collectiveRate = craft.si(Helicopter.COLLECTIVE_RATE);
    pitchLimit = craft.si(Helicopter.PITCH_LIMIT);
    bankLimit = craft.si(Helicopter.BANK_LIMIT);
    pitchRate = craft.si(Helicopter.PITCH_RATE);
    bankRate = craft.si(Helicopter.BANK_RATE);
    yawRate = craft.si(Helicopter.YAW_RATE);
    pitchAcceleration = craft.si(Helicopter.PITCH_ACCELERATION);
    bankAcceleration = craft.si(Helicopter.BANK_ACCELERATION);
    perShownLag = 1 / craft.si(Helicopter.VERTICAL_SPEED_LAG);
    perTwiceDensityArea = 1 / (2 * density * rotor.area());
    hoverInduced = craft.hoverInducedVelocity(air);
    perHover = 1 / hoverInduced;
    motion.hoverInduced = hoverInduced;
    motion.perHoverInduced = perHover;
    motion.perWeight = 1 / weight;
    motion.perNominalRotorSpeed = 1 / nominalSpeed;
    motion.perContinuousPower = 1 / craft.continuousPower(air);
    motion.shortTimePower = greatestPower / craft.continuousPower(air);
    motion.leastCollective = leastCollective;
    motion.tailPush = craft.sense().tailPush();
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
    return hoverInduced;
  }

  /**
   * Tells the equations what the pilot knows of the hover before the descent.
   *
   * @param hover the trimmed hover away from the ground
   */
  public void remember(Trim hover) {
    motion.hoverCollective = hover.collective();
    motion.hoverPitch = hover.pitch();
    motion.hoverBank = hover.bank();
  }

  /**
   * Tells the equations what the pilot held when the ring state was recognised.
   *
   * @param collective blade pitch at three quarters of the radius, rad; NaN if nothing is
   *     recognised yet
   */
  public void held(double collective) {
    motion.heldCollective = collective;
  }

  /**
   * Starts a phase of a manoeuvre: from here on the {@link Cockpit} counts its times from these.
   *
   * @param recognised when the pilot recognised the ring state, s; NaN if not yet
   * @param technique when the technique began, s
   * @param phase when the phase began, s
   */
  public void begin(double recognised, double technique, double phase) {
    motion.recognised = recognised;
    motion.techniqueBegan = technique;
    motion.phaseBegan = phase;
    lastLaw = NOTHING_COMMANDED;
  }

  /**
   * Works out forces, commands and rates at one instant.
   *
   * @param time time since the flight began, s
   * @param state the state, in the order of {@link State}, SI units
   * @param law what is done with the controls
   * @return the motion at that instant, valid until the next call
   */
  public Motion at(double time, double[] state, ControlLaw law) {
    look(time, state, law);
    complete();
    return motion;
  }

  /**
   * The same as {@link #at}, worked out on the caller's own numbers.
   *
   * @param time time since the flight began, s
   * @param state the state, in the order of {@link State}, SI units; part of the motion until the
   *     next call
   * @param rates where the rates of the state are written, in the same order
   * @param law what is done with the controls
   * @return the motion at that instant, valid until the next call
   */
  Motion on(double time, double[] state, double[] rates, ControlLaw law) {
    motion.lend(state, rates);
    look(time, law);
    complete();
    return motion;
  }

  /**
   * The same as {@link #at}, but forces, commands and rates are worked out only if the motion is
   * asked for one of them.
   *
   * @param time time since the flight began, s
   * @param state the state, in the order of {@link State}, SI units
   * @param law what is done with the controls
   * @return the motion at that instant, valid until the next call
   */
  Motion look(double time, double[] state, ControlLaw law) {
    motion.copy(state);
    look(time, law);
    return motion;
  }

  private void look(double time, ControlLaw law) {
    Motion m = motion;
    double[] y = m.state;
    m.time = time;
    lastLaw = law;
    complete = false;
    double sinHeading = Angle.sin(y[State.HEADING]);
    double cosHeading = Angle.cos(y[State.HEADING]);
    wind.velocity(time, y[State.NORTH], y[State.EAST], y[State.UP], m.wind);
    double airN = y[State.SPEED_NORTH] - m.wind[0];
    double airE = y[State.SPEED_EAST] - m.wind[1];
    m.forwardAirspeed = airN * cosHeading + airE * sinHeading;
    m.sidewaysAirspeed = airE * cosHeading - airN * sinHeading;
    m.groundSpeed = y[State.SPEED_NORTH] * cosHeading + y[State.SPEED_EAST] * sinHeading;
    m.sidewaysGroundSpeed = y[State.SPEED_EAST] * cosHeading - y[State.SPEED_NORTH] * sinHeading;
    m.sinHeading = sinHeading;
    m.cosHeading = cosHeading;
  }

  /** Works out what {@link #look} left out. */
  void complete() {
    if (complete) {
      return;
    }
    complete = true;
    Motion m = motion;
    double[] y = m.state;
    double[] dy = m.rates;
    double time = m.time;
    double sinPitch = Angle.sin(y[State.PITCH]);
    double cosPitch = Angle.cos(y[State.PITCH]);
    double sinBank = Angle.sin(y[State.BANK]);
    double cosBank = Angle.cos(y[State.BANK]);
    double sinHeading = m.sinHeading;
    double cosHeading = m.cosHeading;

    // Body axes in the earth frame (north, east, up): nose, right side, shaft.
    double noseN = cosPitch * cosHeading;
    double noseE = cosPitch * sinHeading;
    double noseU = sinPitch;
    double rightN = sinBank * sinPitch * cosHeading - cosBank * sinHeading;
    double rightE = sinBank * sinPitch * sinHeading + cosBank * cosHeading;
    double rightU = -sinBank * cosPitch;
    double shaftN = -cosBank * sinPitch * cosHeading - sinBank * sinHeading;
    double shaftE = -cosBank * sinPitch * sinHeading + sinBank * cosHeading;
    double shaftU = cosBank * cosPitch;

    double airN = y[State.SPEED_NORTH] - m.wind[0];
    double airE = y[State.SPEED_EAST] - m.wind[1];
    double airU = y[State.SPEED_UP] - m.wind[2];
    double axial = airN * shaftN + airE * shaftE + airU * shaftU;
    double alongNose = airN * noseN + airE * noseE + airU * noseU;
    double alongRight = airN * rightN + airE * rightE + airU * rightU;
    double edgewise2 = alongNose * alongNose + alongRight * alongRight;
    double edgewise = Math.sqrt(edgewise2);
    double induced = y[State.INDUCED];
    double rotorSpeed = y[State.ROTOR_SPEED];
    double tipSpeed = rotorSpeed * rotor.radius();
    double through = axial + induced;
    double thrust =
        rotor.thrust(density, tipSpeed, y[State.COLLECTIVE], edgewise2, through)
            * shaking.factor(time, edgewise * perHover, axial * perHover);

    double scaleThrust =
        leastScaleThrust + SoftLimit.positive(thrust - leastScaleThrust, leastScaleThrust);
    double scale = Math.sqrt(scaleThrust * perTwiceDensityArea);
    double perScale = 1 / scale;
    double x = edgewise * perScale;
    double z = axial * perScale;
    double steadyOverScale = inflow.induced(x, z);
    double steady = scale * steadyOverScale;
    if (ground) {
      steady *=
          GroundEffect.inducedRatio(
              rotor.radius(), y[State.UP] + rotor.hubHeight(), edgewise, induced);
    }
    dy[State.INDUCED] =
        (steady - induced) * rotor.inflowRate(edgewise, through, induced, hoverInduced);

    double lossShare = inflow.lossShare(x, z);
    double thrustPower = rotor.thrustPower(thrust, axial, induced, lossShare);
    double profilePower = rotor.profilePower(density, tipSpeed, edgewise2);
    double rotorPower = thrustPower + profilePower;
    double shaftPower = rotorPower + powerLoss * SoftLimit.size(rotorPower, powerRounding);
    double wanted = shaftPower + governorGain * (nominalSpeed - rotorSpeed);
    double enginePower = given(wanted);
    double perRotorSpeed = 1 / rotorSpeed;
    dy[State.ROTOR_SPEED] = (enginePower - shaftPower) * perRotorSpeed * perInertia;

    double side = sidePerTorque * enginePower * perRotorSpeed;
    double half = 0.5 * density;
    double dragNose = -half * forwardArea * alongNose * Math.abs(alongNose);
    double dragRight = -half * sideArea * alongRight * Math.abs(alongRight);
    double dragShaft = -half * undersideArea * axial * Math.abs(axial);
    double alongShaft = thrust * (1 - download) + dragShaft;
    double right = side + dragRight;

    dy[State.NORTH] = y[State.SPEED_NORTH];
    dy[State.EAST] = y[State.SPEED_EAST];
    dy[State.UP] = y[State.SPEED_UP];
    dy[State.SPEED_NORTH] = (alongShaft * shaftN + right * rightN + dragNose * noseN) * perMass;
    dy[State.SPEED_EAST] = (alongShaft * shaftE + right * rightE + dragNose * noseE) * perMass;
    dy[State.SPEED_UP] =
        (alongShaft * shaftU + right * rightU + dragNose * noseU - weight) * perMass;
    dy[State.SHOWN_VERTICAL_SPEED] =
        (y[State.SPEED_UP] - y[State.SHOWN_VERTICAL_SPEED]) * perShownLag;

    m.inflowScale = scale;
    m.steadyOverScale = steadyOverScale;
    m.axial = axial;
    m.edgewise = edgewise;
    m.thrust = thrust;
    m.roughness = shaking.roughness(edgewise * perHover, axial * perHover);
    m.rotorPower = rotorPower;
    m.shaftPower = shaftPower;
    m.enginePower = enginePower;
    m.profilePower = profilePower;
    m.inducedPower = thrustPower - thrust * axial;
    m.dragNose = dragNose;
    m.dragRight = dragRight;
    m.dragShaft = dragShaft;
    m.side = side;
    m.download = download * thrust;

    Controls c = m.controls;
    c.pitch(y[State.PITCH], pitchRate);
    c.bank(y[State.BANK], bankRate);
    c.collective(y[State.COLLECTIVE], collectiveRate);
    c.yaw(0);
    lastLaw.command(m, c);
    follow(c, y, dy);
  }

  /**
   * The same as {@link #at}, without working out an instant that was worked out just before.
   *
   * @param time time since the flight began, s
   * @param state the state, in the order of {@link State}, SI units
   * @param law what is done with the controls
   * @return the motion at that instant, valid until the next call
   */
  Motion again(double time, double[] state, ControlLaw law) {
    boolean same = law == lastLaw && time == motion.time && Arrays.equals(state, motion.state);
    if (!same) {
      return at(time, state, law);
    }
    complete();
    return motion;
  }

  /**
   * Rate at which a change of the induced velocity alone would decay, at the instant that was
   * worked out last: the lag of the inflow, quickened because more inflow means less thrust, and
   * less thrust a different steady inflow. It is the stiffest thing in the equations; an integrator
   * that knows it need not follow it step by step. Within some per cent; where the blades stall the
   * lag alone is slower.
   *
   * @return the rate, 1/s, not negative
   */
  double inflowDecay() {
    Motion m = motion;
    double induced = m.state[State.INDUCED];
    double scale = m.inflowScale;
    double x = m.edgewise / scale;
    double z = m.axial / scale;
    double wider = 1 + SCALE_DIFFERENCE;
    double perScale =
        m.steadyOverScale
            - (inflow.induced(wider * x, wider * z) - m.steadyOverScale) / SCALE_DIFFERENCE;
    double thrustPerInflow =
        rotor.thrustPerInflow(density, m.state[State.ROTOR_SPEED] * rotor.radius());
    double steadyPerInduced = perScale * thrustPerInflow * perTwiceDensityArea / (2 * scale);
    double rate = rotor.inflowRate(m.edgewise, m.axial + induced, induced, hoverInduced);
    return Math.max(0, rate * (1 - steadyPerInduced));
  }

  /**
   * Whether, at the instant that was worked out last, a faster sink lets less air through the disc
   * rather than more, so that it grows by itself.
   *
   * @return true if the slope of the total inflow over the axial speed is negative
   */
  boolean sinkFeedsItself() {
    Motion m = motion;
    return inflow.slope(m.edgewise / m.inflowScale, m.axial / m.inflowScale) < 0;
  }

  private void follow(Controls c, double[] y, double[] dy) {
    double pitch = within(c.pitch, -pitchLimit, pitchLimit);
    double bank = within(c.bank, -bankLimit, bankLimit);
    double collective = within(c.collective, leastCollective, greatestCollective);
    double yaw = within(c.yawRate, -yawRate, yawRate);
    double wantedPitchRate =
        SoftLimit.within(
            (pitch - y[State.PITCH]) * PER_ATTITUDE_TIME, lesser(c.pitchRate, pitchRate));
    double wantedBankRate =
        SoftLimit.within((bank - y[State.BANK]) * PER_ATTITUDE_TIME, lesser(c.bankRate, bankRate));
    dy[State.PITCH] = y[State.PITCH_RATE];
    dy[State.BANK] = y[State.BANK_RATE];
    dy[State.HEADING] = y[State.HEADING_RATE];
    dy[State.PITCH_RATE] =
        SoftLimit.within(
            (wantedPitchRate - y[State.PITCH_RATE]) * PER_RATE_TIME, pitchAcceleration);
    dy[State.BANK_RATE] =
        SoftLimit.within((wantedBankRate - y[State.BANK_RATE]) * PER_RATE_TIME, bankAcceleration);
    dy[State.HEADING_RATE] =
        SoftLimit.within((yaw - y[State.HEADING_RATE]) * PER_RATE_TIME, pitchAcceleration);
    dy[State.COLLECTIVE] =
        SoftLimit.within(
            (collective - y[State.COLLECTIVE]) * PER_COLLECTIVE_TIME,
            lesser(c.collectiveRate, collectiveRate));
  }

  /** The power the engine gives when asked: between nothing and its greatest, rounded off. */
  private double given(double wanted) {
    double capped = wanted - SoftLimit.positive(wanted - greatestPower, powerRounding);
    return SoftLimit.positive(capped, powerRounding);
  }

  private static double within(double value, double low, double high) {
    if (!(value >= low)) {
      return low;
    }
    return lesser(value, high);
  }

  /** The lesser of two numbers, at the cost of a comparison: Math.min also orders NaN and zeros. */
  private static double lesser(double one, double other) {
    return one < other ? one : other;
  }
}
