package io.github.ringstate.inflow;

import java.util.OptionalDouble;

/**
 * The axial speeds of the vortex ring state at one edgewise speed, by one criterion.
 *
 * @param onset axial speed at which a slow descent enters, in hover induced velocities, not
 *     positive
 * @param exit axial speed at which a fast descent leaves, more negative than the onset; empty where
 *     the criterion knows no exit
 */
public record RingBand(double onset, OptionalDouble exit) {

  /** Checks the order of onset and exit. */
  public RingBand {
    if (!(onset <= 0)) {
      throw new IllegalArgumentException(
          "the onset axial speed " + onset + " must not exceed 0 hover induced velocities");
    }
    if (exit.isPresent() && !(exit.getAsDouble() < onset)) {
      throw new IllegalArgumentException(
          "the exit axial speed "
              + exit.getAsDouble()
              + " must be below the onset axial speed "
              + onset
              + " hover induced velocities");
    }
  }

  /**
   * Whether an axial speed lies in the band.
   *
   * @param axial axial speed, in hover induced velocities, positive in climb
   * @return true between onset and exit, both included
   */
  public boolean contains(double axial) {
    return axial <= onset && !(exit.isPresent() && axial < exit.getAsDouble());
  }
}
