package io.github.ringstate.air;

/**
 * The velocity of the air everywhere and at all times: the interface to write for another wind.
 *
 * <p>Frame: north, east, up, fixed to the ground. An implementation is immutable, gives the same
 * velocity for the same arguments however often and in whatever order it is asked, and allocates
 * nothing when asked, since the equations of motion ask many times a second.
 */
@FunctionalInterface
public interface WindField {

  /**
   * The velocity of the air over the ground.
   *
   * @param time time, s
   * @param north position north of the origin, m
   * @param east position east of the origin, m
   * @param height height above ground, m
   * @param result receives the velocity in m/s: north, east, up; length 3 at least
   */
  void velocity(double time, double north, double east, double height, double[] result);
}
