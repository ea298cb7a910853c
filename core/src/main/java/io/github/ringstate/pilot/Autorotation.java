package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Collective down and nose down into autorotation, then a flare and power back into level flight.
 * It costs much height and gets out of any ring state.
 */
public final class Autorotation extends ByNumbers {

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
          PowerSetting.CLIMB_POWER,
          Hands.COLLECTIVE_LATER,
          FAST_ROTOR,
          OVERSPEED_GAIN,
          SLOW_ROTOR,
          DROOP_GAIN,
          PowerSetting.GAIN,
          Drift.GAIN,
          Drift.MAXIMUM,
          Hands.COMING_IN);

  /**
   * Square of a difference of rotor speed, over nominal, that rounds the corner off (numerical).
   */
  private static final double ROTOR_SPEED_ROUNDING = 1e-4;

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Autorotation(ParameterSet numbers) {
    super("autorotation", numbers.only(PARAMETERS), Autorotation::phases);
  }

  /** Creates the technique with the standard value of each parameter. */
  public Autorotation() {
    this(ParameterSet.standard(PARAMETERS));
  }

  private static List<Phase> phases(ParameterSet numbers) {
    double noseDown = numbers.si(NOSE_DOWN);
    double flare = numbers.si(FLARE);
    double kept = numbers.si(COLLECTIVE_KEPT);
    double flareAirspeed = numbers.si(FLARE_AIRSPEED);
    double climb = numbers.si(PowerSetting.CLIMB_POWER);
    double fast = numbers.si(FAST_ROTOR);
    double overspeedGain = numbers.si(OVERSPEED_GAIN);
    double slow = numbers.si(SLOW_ROTOR);
    double droopGain = numbers.si(DROOP_GAIN);
    PowerSetting power = PowerSetting.of(numbers);
    Drift drift = Drift.of(numbers);
    Hands hands = Hands.of(numbers, RATE, COLLECTIVE_RATE);
    return List.of(
        Phase.of(
            "glide",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch() - noseDown,
                    drift.bank(seen, seen.hoverBank()),
                    // more collective where the rotor runs fast, as any pilot gives in a glide
                    seen.minimumCollective()
                        + kept
                        + against(overspeedGain, seen.rotorSpeed() - fast),
                    seen,
                    controls),
            seen -> seen.forwardAirspeed() - flareAirspeed),
        Phase.last(
            "flare and power",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch() + flare,
                    drift.bank(seen, seen.hoverBank()),
                    // less collective where the rotor runs slow, while the engine takes the load
                    power.collective(seen, climb) - against(droopGain, slow - seen.rotorSpeed()),
                    seen,
                    controls)));
  }

  /** Collective against a departure of the rotor speed, rad: none where that is negative. */
  private static double against(double gain, double departure) {
    return 0.5 * gain * (departure + Math.sqrt(departure * departure + ROTOR_SPEED_ROUNDING));
  }
}
