package io.github.ringstate.pilot;

/**
 * What a pilot could know at one instant, from the instruments, the view outside and the body, and
 * from having hovered before the descent. SI units, angles in radians.
 */
public interface Cockpit {

  /**
   * Time since the pilot recognised the ring state.
   *
   * @return the time, s; negative before recognition
   */
  double sinceRecognition();

  /**
   * Time since the phase began.
   *
   * @return the time, s
   */
  double sincePhaseBegan();

  /**
   * Time since the technique began: since recognition, or since a recovery that is composed of
   * others went over to the one that is flown now.
   *
   * @return the time, s
   */
  double sinceTechniqueBegan();

  /**
   * Height: above the ground where there is ground, else above where the flight began.
   *
   * @return the height, m
   */
  double height();

  /**
   * Vertical speed as it is.
   *
   * @return the speed, m/s, positive up
   */
  double verticalSpeed();

  /**
   * Vertical speed as the indicator shows it, late.
   *
   * @return the speed, m/s, positive up
   */
  double indicatedVerticalSpeed();

  /**
   * Vertical acceleration as the body feels it.
   *
   * @return the acceleration, m/s2, positive up, zero in steady flight
   */
  double verticalAcceleration();

  /**
   * Airspeed along the nose.
   *
   * @return the horizontal speed through the air in the direction of the heading, m/s
   */
  double forwardAirspeed();

  /**
   * Airspeed to the right.
   *
   * @return the horizontal speed through the air to the right of the heading, m/s
   */
  double sidewaysAirspeed();

  /**
   * Speed over the ground along the nose.
   *
   * @return the speed, m/s
   */
  double groundSpeed();

  /**
   * Speed over the ground to the right.
   *
   * @return the speed to the right of the heading, m/s
   */
  double sidewaysGroundSpeed();

  /**
   * Pitch attitude.
   *
   * @return the attitude, rad, positive nose up
   */
  double pitch();

  /**
   * Bank.
   *
   * @return the bank, rad, positive to the right
   */
  double bank();

  /**
   * Heading.
   *
   * @return the heading, rad, clockwise from north
   */
  double heading();

  /**
   * Collective pitch.
   *
   * @return blade pitch at three quarters of the radius, rad
   */
  double collective();

  /**
   * Power that rotors and gearbox take; more than the engine gives while the rotor slows.
   *
   * @return the power over the power that may be used without limit of time
   */
  double power();

  /**
   * The most power that the engine can give for minutes.
   *
   * @return the power over the power that may be used without limit of time
   */
  double takeOffPower();

  /**
   * Rotor speed.
   *
   * @return the speed over its nominal value
   */
  double rotorSpeed();

  /**
   * Thrust of the rotor, as the body feels it.
   *
   * @return the thrust over the craft's weight
   */
  double loadFactor();

  /**
   * How much the thrust fluctuates, as the body feels it.
   *
   * @return standard deviation of the thrust over its mean; zero where nothing disturbs it
   */
  double roughness();

  /**
   * Rate of pitch attitude.
   *
   * @return the rate, rad/s, positive nose up
   */
  double pitchRate();

  /**
   * Rate of bank.
   *
   * @return the rate, rad/s, positive to the right
   */
  double bankRate();

  /**
   * Collective that the pilot held at recognition; until then, the collective that is there.
   *
   * @return blade pitch at three quarters of the radius, rad
   */
  double heldCollective();

  /**
   * Collective that the craft needed to hover before the descent, away from the ground.
   *
   * @return blade pitch at three quarters of the radius, rad
   */
  double hoverCollective();

  /**
   * Least collective of the craft.
   *
   * @return blade pitch at three quarters of the radius, rad
   */
  double minimumCollective();

  /**
   * Pitch attitude in the hover before the descent.
   *
   * @return the attitude, rad, positive nose up
   */
  double hoverPitch();

  /**
   * Bank in the hover before the descent.
   *
   * @return the bank, rad, positive to the right
   */
  double hoverBank();

  /**
   * The side to which the tail rotor pushes the craft.
   *
   * @return +1 for the right, -1 for the left
   */
  int tailPush();
}
