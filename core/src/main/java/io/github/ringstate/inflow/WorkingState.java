package io.github.ringstate.inflow;

/** The working states of a rotor, from climb to fast descent (Lock, ARC R&amp;M 1014 and later). */
public enum WorkingState {
  /** Climb, hover, level flight and slow descent: the slipstream leaves downward. */
  NORMAL_WORKING("normal working state"),
  /** The wake gathers at the disc. */
  VORTEX_RING("vortex ring state"),
  /** Past the ring, still with a mean flow downward through the disc. */
  TURBULENT_WAKE("turbulent wake state"),
  /** The mean flow is upward through the disc: the rotor takes energy from the air. */
  WINDMILL_BRAKE("windmill brake state");

  private final String label;

  WorkingState(String label) {
    this.label = label;
  }

  /**
   * The state as a person reads it.
   *
   * @return for instance {@code vortex ring state}
   */
  public String label() {
    return label;
  }
}
