package io.github.ringstate.craft;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/** The numbers that bound what a craft's controls and attitudes do, and what its pilot is shown. */
public final class CraftLimits {

  /** Least collective pitch at three quarters of the radius. Default 1 deg, range -5 to 10 deg. */
  public static final Parameter MINIMUM_COLLECTIVE =
      Parameter.of("minimum collective", Unit.DEGREE, -5, 10, 1, Helicopter.INVENTED);

  /**
   * Greatest collective pitch at three quarters of the radius. Default 16 deg, range 5 to 30 deg.
   */
  public static final Parameter MAXIMUM_COLLECTIVE =
      Parameter.of("maximum collective", Unit.DEGREE, 5, 30, 16, Helicopter.INVENTED);

  /** Greatest rate of collective pitch. Default 10 deg/s, range 1 to 60 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of(
          "collective rate",
          Unit.DEGREE_PER_SECOND,
          1,
          60,
          10,
          "assumed: full travel in about 1.5 s; no source found");

  /** Greatest pitch attitude, nose up or down. Default 30 deg, range 10 to 60 deg. */
  public static final Parameter PITCH_LIMIT =
      Parameter.of("pitch limit", Unit.DEGREE, 10, 60, 30, "assumed");

  /** Greatest bank, left or right. Default 45 deg, range 10 to 60 deg. */
  public static final Parameter BANK_LIMIT =
      Parameter.of("bank limit", Unit.DEGREE, 10, 60, 45, "assumed");

  /** Greatest rate of pitch attitude. Default 20 deg/s, range 2 to 60 deg/s. */
  public static final Parameter PITCH_RATE =
      Parameter.of("pitch rate", Unit.DEGREE_PER_SECOND, 2, 60, 20, "assumed");

  /** Greatest rate of bank. Default 30 deg/s, range 2 to 90 deg/s. */
  public static final Parameter BANK_RATE =
      Parameter.of("bank rate", Unit.DEGREE_PER_SECOND, 2, 90, 30, "assumed");

  /** Greatest rate of heading. Default 30 deg/s, range 2 to 90 deg/s. */
  public static final Parameter YAW_RATE =
      Parameter.of("yaw rate", Unit.DEGREE_PER_SECOND, 2, 90, 30, "assumed");

  /** Greatest angular acceleration in pitch and yaw. Default 50 deg/s2, range 5 to 500 deg/s2. */
  public static final Parameter PITCH_ACCELERATION =
      Parameter.of("pitch acceleration", Unit.DEGREE_PER_SECOND_SQUARED, 5, 500, 50, "assumed");

  /** Greatest angular acceleration in bank. Default 80 deg/s2, range 5 to 500 deg/s2. */
  public static final Parameter BANK_ACCELERATION =
      Parameter.of("bank acceleration", Unit.DEGREE_PER_SECOND_SQUARED, 5, 500, 80, "assumed");

  /**
   * Time in which pilot and craft together correct an error of attitude. Default 0.35 s, range 0.1
   * to 2 s.
   */
  public static final Parameter ATTITUDE_TIME =
      Parameter.of(
          "attitude time", Unit.SECOND, 0.1, 2, 0.35, "assumed: a pilot's brisk correction");

  /**
   * Time in which pilot and craft together correct an error of attitude or heading rate. Default
   * 0.12 s, range 0.03 to 1 s.
   */
  public static final Parameter ATTITUDE_RATE_TIME =
      Parameter.of(
          "attitude rate time",
          Unit.SECOND,
          0.03,
          1,
          0.12,
          "assumed: a damping ratio of 0.85 with the attitude time");

  /** Time in which a pilot corrects an error of collective. Default 0.15 s, range 0.03 to 1 s. */
  public static final Parameter COLLECTIVE_TIME =
      Parameter.of("collective time", Unit.SECOND, 0.03, 1, 0.15, "assumed");

  /**
   * Power-on minimum of the rotor speed, at which the low-speed warning comes on. Default 95 %,
   * range 70 to 99 %.
   */
  public static final Parameter LOW_ROTOR_SPEED =
      Parameter.of("low rotor speed", Unit.PERCENT, 70, 99, 95, Helicopter.INVENTED);

  /** Power-off maximum of the rotor speed. Default 110 %, range 101 to 130 %. */
  public static final Parameter HIGH_ROTOR_SPEED =
      Parameter.of(
          "high rotor speed",
          Unit.PERCENT,
          101,
          130,
          110,
          "power off 90 to 110 per cent for most craft; common practice, no source");

  /** Time constant of the vertical speed indicator. Default 2 s, range 0.1 to 9 s. */
  public static final Parameter VERTICAL_SPEED_LAG =
      Parameter.of(
          "vertical speed indicator lag",
          Unit.SECOND,
          0.1,
          9,
          2,
          "assumed: first-order lag of a plain pressure instrument");

  /** All of them, in the order in which a craft is written down. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          MINIMUM_COLLECTIVE,
          MAXIMUM_COLLECTIVE,
          COLLECTIVE_RATE,
          PITCH_LIMIT,
          BANK_LIMIT,
          PITCH_RATE,
          BANK_RATE,
          YAW_RATE,
          PITCH_ACCELERATION,
          BANK_ACCELERATION,
          ATTITUDE_TIME,
          ATTITUDE_RATE_TIME,
          COLLECTIVE_TIME,
          LOW_ROTOR_SPEED,
          HIGH_ROTOR_SPEED,
          VERTICAL_SPEED_LAG);

  private CraftLimits() {}
}
