package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Collective down and nose down into autorotation, then a flare and power back into level flight.
 * It costs much height and gets out of any ring state.
 */
public final class Autorotation extends MadeOf implements Recovery {

  /** How far the nose goes down. Default 12 deg, range 5 to 30 deg. */
  public static final Parameter NOSE_DOWN =
      Parameter.of("nose down", Unit.DEGREE, 5, 30, 12, "assumed");

  /** How far the nose goes up in the flare. Default 12 deg, range 0 to 30 deg. */
  public static final Parameter FLARE = Parameter.of("flare", Unit.DEGREE, 0, 30, 12, "assumed");

  /** How fast the nose moves. Default 12 deg/s, range 2 to 30 deg/s. */
  public static final Parameter RATE =
      Parameter.of("attitude rate", Unit.DEGREE_PER_SECOND, 2, 30, 12, "assumed");

  /**
   * Collective of the descent above the craft's least collective. Default 2 deg, range 0 to 8 deg.
   */
  public static final Parameter COLLECTIVE_KEPT =
      Parameter.of("collective kept", Unit.DEGREE, 0, 8, 2, "assumed: keeps the rotor's speed");

  /** How fast the collective moves. Default 8 deg/s, range 1 to 20 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective rate", Unit.DEGREE_PER_SECOND, 1, 20, 8, "assumed");

  /** Airspeed at which the flare begins. Default 45 kt, range 20 to 80 kt. */
  public static final Parameter FLARE_AIRSPEED =
      Parameter.of(
          "flare airspeed", Unit.KNOT, 20, 80, 45, "assumed: below the usual speed of a glide");

  /** Power of the climb, over continuous power. Default 100 %, range 50 to 110 %. */
  public static final Parameter CLIMB_POWER =
      Parameter.of("climb power", Unit.PERCENT, 50, 110, 100, "assumed: continuous power");

  /**
   * How much later the collective moves than the nose; earlier if negative. Default 0 s, range -3
   * to 3 s.
   */
  public static final Parameter COLLECTIVE_LATER =
      Parameter.of("collective later", Unit.SECOND, -3, 3, 0, "assumed: both at once");

  /**
   * Rotor speed over its nominal value beyond which the collective is raised. Default 1.05, range 1
   * to 1.2 (a pure number).
   */
  public static final Parameter FAST_ROTOR =
      Parameter.of("fast rotor speed", Unit.ONE, 1, 1.2, 1.05, "assumed");

  /**
   * Collective that is put in for an excess of all the nominal rotor speed. Default 0.6 rad, range
   * 0 to 3 rad.
   */
  public static final Parameter OVERSPEED_GAIN =
      Parameter.of("overspeed gain", Unit.RADIAN, 0, 3, 0.6, "assumed");

  /**
   * Rotor speed over its nominal value below which power comes back more slowly. Default 0.97,
   * range 0.8 to 1 (a pure number).
   */
  public static final Parameter SLOW_ROTOR =
      Parameter.of("slow rotor speed", Unit.ONE, 0.8, 1, 0.97, "assumed");

  /**
   * Collective held back for a rotor speed that is lower by all of its nominal value. Default 2
   * rad, range 0 to 10 rad.
   */
  public static final Parameter DROOP_GAIN =
      Parameter.of("droop gain", Unit.RADIAN, 0, 10, 2, "assumed");

  /** All parameters of the technique. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          NOSE_DOWN,
          FLARE,
          RATE,
          COLLECTIVE_KEPT,
          COLLECTIVE_RATE,
          FLARE_AIRSPEED,
          CLIMB_POWER,
          COLLECTIVE_LATER,
          FAST_ROTOR,
          OVERSPEED_GAIN,
          SLOW_ROTOR,
          DROOP_GAIN,
          PowerSetting.GAIN,
          Drift.GAIN,
          Drift.MAXIMUM);

  /**
   * Square of a difference of rotor speed, over nominal, that rounds the corner off (numerical).
   */
  private static final double ROTOR_SPEED_ROUNDING = 1e-4;

  private final ParameterSet numbers;
  private final double noseDown;
  private final double flare;
  private final double rate;
  private final double collectiveKept;
  private final double collectiveRate;
  private final double flareAirspeed;
  private final double climbPower;
  private final double fastRotor;
  private final double overspeedGain;
  private final double slowRotor;
  private final double droopGain;
  private final Drift drift;
  private final PowerSetting power;
  private final StepOrder order;
  private final List<Phase> phases;

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Autorotation(ParameterSet numbers) {
    super(numbers.only(PARAMETERS));
    this.numbers = numbers.only(PARAMETERS);
    noseDown = numbers.si(NOSE_DOWN);
    flare = numbers.si(FLARE);
    rate = numbers.si(RATE);
    collectiveKept = numbers.si(COLLECTIVE_KEPT);
    collectiveRate = numbers.si(COLLECTIVE_RATE);
    flareAirspeed = numbers.si(FLARE_AIRSPEED);
    climbPower = numbers.si(CLIMB_POWER);
    fastRotor = numbers.si(FAST_ROTOR);
    overspeedGain = numbers.si(OVERSPEED_GAIN);
    slowRotor = numbers.si(SLOW_ROTOR);
    droopGain = numbers.si(DROOP_GAIN);
    drift = Drift.of(numbers);
    power = new PowerSetting(numbers.si(PowerSetting.GAIN));
    order = new StepOrder(numbers.si(COLLECTIVE_LATER));
    phases =
        List.of(
            Phase.of("glide", this::glide, seen -> seen.forwardAirspeed() - flareAirspeed),
            Phase.last("flare and power", this::flareAndPower));
  }

  /**
   * The numbers of the technique.
   *
   * @return a value for each of {@link #PARAMETERS}
   */
  @Override
  public ParameterSet numbers() {
    return numbers;
  }

  /** Creates the technique with the standard value of each parameter. */
  public Autorotation() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "autorotation";
  }

  @Override
  public List<Phase> phases() {
    return phases;
  }

  private void glide(Cockpit seen, Controls controls) {
    double collective = seen.minimumCollective() + collectiveKept + againstOverspeed(seen);
    command(-noseDown, collective, seen, controls);
  }

  private void flareAndPower(Cockpit seen, Controls controls) {
    double collective = power.collective(seen, climbPower) - againstDroop(seen);
    command(flare, collective, seen, controls);
  }

  private void command(double noseUp, double collective, Cockpit seen, Controls controls) {
    double nose = seen.hoverPitch() + noseUp;
    controls.bank(order.attitude(seen, seen.bank(), drift.bank(seen, seen.hoverBank())), rate);
    controls.pitch(order.attitude(seen, seen.pitch(), nose), rate);
    controls.collective(order.collective(seen, collective), collectiveRate);
  }

  /** Less collective where the rotor runs slow, while the engine takes the load again. */
  private double againstDroop(Cockpit seen) {
    double under = slowRotor - seen.rotorSpeed();
    return 0.5 * droopGain * (under + Math.sqrt(under * under + ROTOR_SPEED_ROUNDING));
  }

  /** More collective where the rotor runs fast, as any pilot gives in a glide. */
  private double againstOverspeed(Cockpit seen) {
    double over = seen.rotorSpeed() - fastRotor;
    return 0.5 * overspeedGain * (over + Math.sqrt(over * over + ROTOR_SPEED_ROUNDING));
  }
}
