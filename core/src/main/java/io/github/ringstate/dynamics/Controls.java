package io.github.ringstate.dynamics;

/**
 * What is commanded at one instant. A {@link Commander} writes it; the equations of motion read it,
 * and hold it within the limits of the craft.
 *
 * <p>Angles in radians, and an angle or a rate that is too great to be one in radians is refused;
 * {@link io.github.ringstate.quantity.Unit#DEGREE} converts. The bound is a quarter of a turn, 1.57
 * rad, so a number in degrees that is smaller passes unnoticed: 1 for a degree is flown as 57
 * degrees, as far as the craft goes. What is not commanded stays as it is: the equations of motion
 * first set the attitude and collective that the craft has at that instant, with the craft's own
 * greatest rates. What is not a number is refused, so that a mistake is not flown as full
 * deflection.
 */
public final class Controls {

  /** Part of the message when a command is not a number. */
  public static final String NOT_A_NUMBER = " is not a number";

  /** Part of the message when a rate is not positive; the rate stands behind it. */
  public static final String NOT_POSITIVE = " must be positive, not ";

  /** Part of the message when a command is too great; the command stands before it. */
  public static final String TOO_GREAT =
      " is more than a helicopter can mean; angles are in radians: ";

  /** The greatest attitude that can be meant, rad: a quarter of a turn. */
  private static final double ATTITUDE = 0.5 * Math.PI;

  /** The least collective that can be meant, rad: a law may ask for less than there is. */
  private static final double MINIMUM_COLLECTIVE = -4;

  /** The greatest rate that can be meant, rad/s: more than the greatest of any craft here. */
  private static final double RATE = 2;

  double pitch;
  double bank;
  double collective;
  double yawRate;
  double pitchRate;
  double bankRate;
  double collectiveRate;

  /** Creates controls with everything at zero. */
  public Controls() {}

  /**
   * Commands an attitude and a collective as they are, at the rates that were set before, and the
   * heading held.
   *
   * @param presentPitch the pitch attitude, rad, positive nose up
   * @param presentBank the bank, rad, positive to the right
   * @param presentCollective blade pitch at three quarters of the radius, rad
   */
  public void hold(double presentPitch, double presentBank, double presentCollective) {
    pitch = presentPitch;
    bank = presentBank;
    collective = presentCollective;
    yawRate = 0;
  }

  /**
   * Commands a pitch attitude.
   *
   * @param attitude the attitude, rad, positive nose up
   * @param rate the greatest rate on the way there, rad/s, positive
   * @throws BadCommandException if an angle is not a number or beyond a quarter of a turn (a
   *     collective below -4 rad), or the rate is not positive or beyond 2 rad/s
   */
  public void pitch(double attitude, double rate) {
    pitch = angle("pitch", attitude, -ATTITUDE, ATTITUDE);
    pitchRate = positive("pitch", rate);
  }

  /**
   * Commands a bank.
   *
   * @param angle the bank, rad, positive to the right
   * @param rate the greatest rate on the way there, rad/s, positive
   * @throws BadCommandException if an angle is not a number or beyond a quarter of a turn (a
   *     collective below -4 rad), or the rate is not positive or beyond 2 rad/s
   */
  public void bank(double angle, double rate) {
    bank = angle("bank", angle, -ATTITUDE, ATTITUDE);
    bankRate = positive("bank", rate);
  }

  /**
   * Commands a collective pitch.
   *
   * @param angle blade pitch at three quarters of the radius, rad
   * @param rate the greatest rate on the way there, rad/s, positive
   * @throws BadCommandException if an angle is not a number or beyond a quarter of a turn (a
   *     collective below -4 rad), or the rate is not positive or beyond 2 rad/s
   */
  public void collective(double angle, double rate) {
    collective = angle("collective", angle, MINIMUM_COLLECTIVE, ATTITUDE);
    collectiveRate = positive("collective", rate);
  }

  /**
   * Commands a rate of heading by the pedals; zero holds the heading whatever the torque.
   *
   * @param rate the rate, rad/s, positive clockwise from above
   * @throws BadCommandException if the rate is not a number or beyond 2 rad/s
   */
  public void yaw(double rate) {
    yawRate = angle("yaw", rate, -RATE, RATE);
  }

  private static double angle(String control, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      String command = "the command of " + control;
      throw new BadCommandException(
          Double.isNaN(value) ? command + NOT_A_NUMBER : command + TOO_GREAT + value);
    }
    return value;
  }

  private static double positive(String control, double rate) {
    if (!(rate > 0 && rate <= RATE)) {
      String command = "the rate of " + control;
      throw new BadCommandException(
          rate > 0 ? command + TOO_GREAT + rate : command + NOT_POSITIVE + rate + " rad/s");
    }
    return rate;
  }

  /**
   * The pitch attitude that is commanded.
   *
   * @return the attitude, rad, positive nose up
   */
  public double pitch() {
    return pitch;
  }

  /**
   * The greatest rate of pitch attitude that is commanded.
   *
   * @return the rate, rad/s
   */
  public double pitchRate() {
    return pitchRate;
  }

  /**
   * The bank that is commanded.
   *
   * @return the bank, rad, positive to the right
   */
  public double bank() {
    return bank;
  }

  /**
   * The greatest rate of bank that is commanded.
   *
   * @return the rate, rad/s
   */
  public double bankRate() {
    return bankRate;
  }

  /**
   * The collective that is commanded.
   *
   * @return blade pitch at three quarters of the radius, rad
   */
  public double collective() {
    return collective;
  }

  /**
   * The greatest rate of collective that is commanded.
   *
   * @return the rate, rad/s
   */
  public double collectiveRate() {
    return collectiveRate;
  }
}
