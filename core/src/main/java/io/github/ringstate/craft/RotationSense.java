package io.github.ringstate.craft;

/**
 * Which way the main rotor turns, seen from above.
 *
 * <p>The tail rotor balances the main rotor's torque by pushing the craft to one side. In the
 * lateral recovery the pilot goes to that side.
 */
public enum RotationSense {
  /** Counter-clockwise from above: the tail rotor pushes the craft to the right. */
  COUNTER_CLOCKWISE("counter-clockwise", 1),
  /** Clockwise from above: the tail rotor pushes the craft to the left. */
  CLOCKWISE("clockwise", -1);

  private final String label;
  private final int tailPush;

  RotationSense(String label, int tailPush) {
    this.label = label;
    this.tailPush = tailPush;
  }

  /**
   * The sense in words.
   *
   * @return lower case, with a hyphen
   */
  public String label() {
    return label;
  }

  /**
   * The side to which the tail rotor pushes the craft under power.
   *
   * @return +1 for the right, -1 for the left
   */
  public int tailPush() {
    return tailPush;
  }
}
