package io.github.ringstate.flight;

/**
 * What a pilot commands at one instant. A {@link ControlLaw} writes it; the equations of motion
 * read it, and hold it within the limits of the craft.
 *
 * <p>Angles in radians. What a law does not set stays as it was set before in the same call: the
 * equations of motion first set the attitude and collective that the craft has at that instant,
 * with the craft's own greatest rates.
 */
public final class Controls {

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
   * Commands what is there: the present attitude and collective, heading held.
   *
   * @param seen what can be known
   */
  public void hold(Cockpit seen) {
    pitch = seen.pitch();
    bank = seen.bank();
    collective = seen.collective();
    yawRate = 0;
  }

  /**
   * Commands a pitch attitude.
   *
   * @param attitude the attitude, rad, positive nose up
   * @param rate the greatest rate on the way there, rad/s, positive
   */
  public void pitch(double attitude, double rate) {
    pitch = attitude;
    pitchRate = rate;
  }

  /**
   * Commands a bank.
   *
   * @param angle the bank, rad, positive to the right
   * @param rate the greatest rate on the way there, rad/s, positive
   */
  public void bank(double angle, double rate) {
    bank = angle;
    bankRate = rate;
  }

  /**
   * Commands a collective pitch.
   *
   * @param angle blade pitch at three quarters of the radius, rad
   * @param rate the greatest rate on the way there, rad/s, positive
   */
  public void collective(double angle, double rate) {
    collective = angle;
    collectiveRate = rate;
  }

  /**
   * Commands a rate of heading by the pedals; zero holds the heading whatever the torque.
   *
   * @param rate the rate, rad/s, positive clockwise from above
   */
  public void yaw(double rate) {
    yawRate = rate;
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
