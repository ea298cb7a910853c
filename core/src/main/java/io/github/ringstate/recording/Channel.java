package io.github.ringstate.recording;

/**
 * What a recording may hold beside its times. All values are in SI units; the controls are shares.
 */
public enum Channel {
  /** Height by satellite or survey above a fixed level, m. */
  HEIGHT,
  /** Pressure altitude, m in the standard atmosphere; its level is not that of {@link #HEIGHT}. */
  PRESSURE_ALTITUDE,
  /** Vertical speed as an instrument gave it, m/s, positive up. */
  VERTICAL_SPEED,
  /** Speed over the ground, m/s, not negative. */
  GROUND_SPEED,
  /** Direction of flight over the ground, rad clockwise from north. */
  TRACK,
  /** True airspeed, m/s, not negative. */
  AIRSPEED,
  /** Where the nose points, rad clockwise from north. */
  HEADING,
  /** Attitude of the nose, rad, positive up. */
  PITCH,
  /** Bank, rad, positive to the right. */
  BANK,
  /** Place of the collective lever, 0 at the lower stop and 1 at the upper. */
  COLLECTIVE,
  /** Torque or power, 1 at the take-off limit. */
  TORQUE,
  /** Rotor speed, 1 as governed. */
  ROTOR_SPEED
}
