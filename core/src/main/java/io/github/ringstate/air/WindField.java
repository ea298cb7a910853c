package io.github.ringstate.air;

/**
 * The velocity of the air everywhere and at all times: the interface to write for another wind.
 *
 * <p>Frame: north, east, up, fixed to the ground; the origin is under the start of the flight, time
 * counts from the start. An implementation is immutable, safe to share between threads, gives the
 * same velocity for the same arguments however often and in whatever order it is asked, and
 * allocates nothing when asked, since the equations of motion ask many times a second, also for
 * instants that are tried and thrown away. It has no clock, no memory and no chance of its own: a
 * random wind is drawn from a seed beforehand, as {@link Gusts} are. It is continuous in all its
 * arguments; a jump costs thousands of evaluations, at each crossing. A record is best, since
 * encounters in equal winds are equal then.
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

  /**
   * Whether the velocity may depend on the height. Where it does, more than one start is tried for
   * a flight to meet the ring state at its height.
   *
   * @return true unless the wind is known to be the same at all heights
   */
  default boolean variesWithHeight() {
    return true;
  }
}
