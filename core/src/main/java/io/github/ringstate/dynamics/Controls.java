package io.github.ringstate.dynamics;

/**
 * What is commanded at one instant. A {@link Commander} writes it; the equations of motion read it,
 * and hold it within the limits of the craft.
 *
 * <p>Angles in radians. What is not commanded stays as it is: the equations of motion first set the
 * attitude and collective that the craft has at that instant, with the craft's own greatest rates.
 * What is not a number is refused, so that a mistake is not flown as full deflection.
 */
public final class Controls {

  /** Part of the message when a command is not a number. */
  public static final String NOT_A_NUMBER = " is not a number";

  /** Part of the message when a rate is not positive; the rate stands behind it. */
  public static final String NOT_POSITIVE = " must be positive, not ";

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
   * @throws IllegalArgumentException if an argument is not a number or the rate not positive
   */
  public void pitch(double attitude, double rate) {
    pitch = number("pitch", attitude);
    pitchRate = positive("pitch", rate);
  }

  /**
   * Commands a bank.
   *
   * @param angle the bank, rad, positive to the right
   * @param rate the greatest rate on the way there, rad/s, positive
   * @throws IllegalArgumentException if an argument is not a number or the rate not positive
   */
  public void bank(double angle, double rate) {
    bank = number("bank", angle);
    bankRate = positive("bank", rate);
  }

  /**
   * Commands a collective pitch.
   *
   * @param angle blade pitch at three quarters of the radius, rad
   * @param rate the greatest rate on the way there, rad/s, positive
   * @throws IllegalArgumentException if an argument is not a number or the rate not positive
   */
  public void collective(double angle, double rate) {
    collective = number("collective", angle);
    collectiveRate = positive("collective", rate);
  }

  /**
   * Commands a rate of heading by the pedals; zero holds the heading whatever the torque.
   *
   * @param rate the rate, rad/s, positive clockwise from above
   * @throws IllegalArgumentException if the rate is not a number
   */
  public void yaw(double rate) {
    yawRate = number("yaw", rate);
  }

  private static double number(String control, double value) {
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException("the command of " + control + NOT_A_NUMBER);
    }
    return value;
  }

  private static double positive(String control, double rate) {
    if (!(rate > 0)) {
      throw new IllegalArgumentException("the rate of " + control + NOT_POSITIVE + rate + " rad/s");
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
