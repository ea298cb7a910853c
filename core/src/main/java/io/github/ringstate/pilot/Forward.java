package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Nose down and collective reduced until the craft flies out of its own wake, then power back as
 * airspeed comes and the nose up to climb away. The recovery of older teaching.
 */
public final class Forward extends ByNumbers {

  /** How far the nose goes down. Default 15 deg, range 5 to 30 deg. */
  public static final Parameter NOSE_DOWN =
      Parameter.of(
          "nose down",
          Unit.DEGREE,
          5,
          30,
          15,
          "assumed: the attitude for a climb speed and a little more; common practice, no source");

  /** How fast the nose goes down and up. Default 12 deg/s, range 2 to 30 deg/s. */
  public static final Parameter RATE =
      Parameter.of("attitude rate", Unit.DEGREE_PER_SECOND, 2, 30, 12, "assumed");

  /**
   * How far the collective goes below the one that was held at recognition. Default 0.9 deg, range
   * 0 to 8 deg.
   */
  public static final Parameter COLLECTIVE_REDUCTION =
      Parameter.of("collective reduction", Unit.DEGREE, 0, 8, 0.9, "assumed");

  /** How fast the collective moves. Default 6 deg/s, range 1 to 20 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective rate", Unit.DEGREE_PER_SECOND, 1, 20, 6, "assumed");

  /** Airspeed at which power begins to come back. Default 8 kt, range 0 to 40 kt. */
  public static final Parameter POWER_AIRSPEED =
      Parameter.of(
          "power airspeed",
          Unit.KNOT,
          0,
          40,
          8,
          "assumed: as soon as the craft plainly moves ahead");

  /** Airspeed at which the nose comes up. Default 24 kt, range 10 to 60 kt. */
  public static final Parameter EXIT_AIRSPEED =
      Parameter.of(
          "exit airspeed",
          Unit.KNOT,
          10,
          60,
          24,
          "upper end of effective translational lift in the handbooks, 16 to 24 kt");

  /**
   * Part of the way down that the nose must have gone before power comes back; all of it is
   * approached and never reached. Default 50 %, range 0 to 90 %.
   */
  public static final Parameter NOSE_LOWERED =
      Parameter.of("nose lowered for power", Unit.PERCENT, 0, 90, 50, "assumed: half of it");

  /** All parameters of the technique. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          NOSE_DOWN,
          RATE,
          COLLECTIVE_REDUCTION,
          COLLECTIVE_RATE,
          POWER_AIRSPEED,
          EXIT_AIRSPEED,
          PowerSetting.CLIMB_POWER,
          Hands.COLLECTIVE_LATER,
          PowerSetting.GAIN,
          Drift.GAIN,
          Drift.MAXIMUM,
          NOSE_LOWERED,
          Hands.COMING_IN);

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public Forward(ParameterSet numbers) {
    super("forward", numbers.only(PARAMETERS), Forward::phases);
  }

  /** Creates the technique with the standard value of each parameter. */
  public Forward() {
    this(ParameterSet.standard(PARAMETERS));
  }

  private static List<Phase> phases(ParameterSet numbers) {
    double noseDown = numbers.si(NOSE_DOWN);
    double lowered = numbers.si(NOSE_LOWERED) * noseDown;
    double reduction = numbers.si(COLLECTIVE_REDUCTION);
    double powerAirspeed = numbers.si(POWER_AIRSPEED);
    double exitAirspeed = numbers.si(EXIT_AIRSPEED);
    double climb = numbers.si(PowerSetting.CLIMB_POWER);
    PowerSetting power = PowerSetting.of(numbers);
    Drift drift = Drift.of(numbers);
    Hands hands = Hands.of(numbers, RATE, COLLECTIVE_RATE);
    return List.of(
        Phase.of(
            "nose down",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch() - noseDown,
                    drift.bank(seen, seen.hoverBank()),
                    seen.heldCollective() - reduction,
                    seen,
                    controls),
            // one without the other is an approach that still slows, or a nose just put down
            seen ->
                Math.min(
                    seen.hoverPitch() - seen.pitch() - lowered,
                    seen.forwardAirspeed() - powerAirspeed)),
        Phase.of(
            "power back",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch() - noseDown,
                    drift.bank(seen, seen.hoverBank()),
                    power.collective(seen, climb),
                    seen,
                    controls),
            seen -> seen.forwardAirspeed() - exitAirspeed),
        Phase.last(
            "climb away",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch(),
                    drift.bank(seen, seen.hoverBank()),
                    power.collective(seen, climb),
                    seen,
                    controls)));
  }
}
