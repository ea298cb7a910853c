package io.github.ringstate.dynamics;

/**
 * Places of the quantities in the state vector of a flight.
 *
 * <p>The earth frame is north, east, up, fixed to the ground and flat. Attitude is heading, pitch,
 * bank in that order (the usual order of aircraft angles): heading clockwise from north, pitch
 * positive nose up, bank positive to the right. SI units throughout.
 */
public final class State {

  /** Distance to the north, m. */
  public static final int NORTH = 0;

  /** Distance to the east, m. */
  public static final int EAST = 1;

  /** Height, m: above the ground where there is ground, else above the start. */
  public static final int UP = 2;

  /** Speed over the ground to the north, m/s. */
  public static final int SPEED_NORTH = 3;

  /** Speed over the ground to the east, m/s. */
  public static final int SPEED_EAST = 4;

  /** Vertical speed, m/s, positive up. */
  public static final int SPEED_UP = 5;

  /** Pitch attitude, rad, positive nose up. */
  public static final int PITCH = 6;

  /** Bank, rad, positive to the right. */
  public static final int BANK = 7;

  /** Heading, rad, clockwise from north. */
  public static final int HEADING = 8;

  /** Rate of pitch attitude, rad/s. */
  public static final int PITCH_RATE = 9;

  /** Rate of bank, rad/s. */
  public static final int BANK_RATE = 10;

  /** Rate of heading, rad/s. */
  public static final int HEADING_RATE = 11;

  /** Collective pitch at three quarters of the radius, rad. */
  public static final int COLLECTIVE = 12;

  /** Induced velocity, m/s, positive down through the disc. */
  public static final int INDUCED = 13;

  /** Rotor speed, rad/s. */
  public static final int ROTOR_SPEED = 14;

  /** What the vertical speed indicator shows, m/s, positive up. */
  public static final int INDICATED_VERTICAL_SPEED = 15;

  /**
   * Level of the ring that is remembered, in hover induced velocities: an axial speed, 0 before
   * there was a ring; see {@link io.github.ringstate.inflow.RingMemory}.
   */
  public static final int RING = 16;

  /** Power that the engine gives, over the greatest power of engine and drive train in this air. */
  public static final int ENGINE = 17;

  /**
   * Gradient of the induced velocity along the nose, from hub to rim, m/s, positive for more inflow
   * over the tail; 0 unless {@link io.github.ringstate.inflow.InflowModel#hasGradient}.
   */
  public static final int GRADIENT_NOSE = 18;

  /** The same to the right, positive for more inflow to the left of the hub. */
  public static final int GRADIENT_RIGHT = 19;

  /** Number of quantities. */
  public static final int SIZE = 20;

  /** One over the scale in which an error of each quantity counts, in the order above. */
  private static final double[] INVERSE_SCALES = {
    0, 0, 1, // position: only the height matters
    1, 1, 1, // m/s
    5, 5, 5, // 0.2 rad
    1, 1, 1, // rad/s
    20, // 0.05 rad
    0.1, // m/s: an error of the inflow dies away within a step or two
    0.1, // rad/s, of some tens
    0.2, // the indicator is read, not flown by
    10, // 0.1 hover induced velocities of the remembered level
    0.2, // of the greatest power: the rotor's inertia evens it out
    0.1, // m/s: acts on the inflow alone
    0.1
  };

  private State() {}

  /** One over the scale in which an error of each quantity of the state counts. */
  static double[] inverseScales() {
    return INVERSE_SCALES.clone();
  }
}
