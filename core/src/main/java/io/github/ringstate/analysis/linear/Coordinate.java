package io.github.ringstate.analysis.linear;

import io.github.ringstate.dynamics.State;
import io.github.ringstate.quantity.Unit;

/** A quantity of the state whose small changes a linear model follows, or that is commanded. */
public enum Coordinate {
  /** Speed over the ground to the north, m/s: ahead, where the heading is north. */
  SURGE("surge", State.SPEED_NORTH, Unit.METRE_PER_SECOND, 1e-3),

  /** Speed over the ground to the east, m/s: to the right, where the heading is north. */
  SWAY("sway", State.SPEED_EAST, Unit.METRE_PER_SECOND, 1e-3),

  /** Vertical speed, m/s, positive up. */
  HEAVE("heave", State.SPEED_UP, Unit.METRE_PER_SECOND, 1e-3),

  /** Pitch attitude, rad, positive nose up. */
  PITCH("pitch", State.PITCH, Unit.RADIAN, 1e-4),

  /** Bank, rad, positive to the right. */
  BANK("bank", State.BANK, Unit.RADIAN, 1e-4),

  /** Collective pitch, rad. */
  COLLECTIVE("collective", State.COLLECTIVE, Unit.RADIAN, 1e-4),

  /** Induced velocity, m/s, positive down through the disc. */
  INFLOW("inflow", State.INDUCED, Unit.METRE_PER_SECOND, 1e-3),

  /** Rotor speed, rad/s. */
  ROTOR_SPEED("rotor speed", State.ROTOR_SPEED, Unit.RADIAN_PER_SECOND, 1e-3),

  /** Level of the ring that is remembered, in hover induced velocities. */
  RING("ring", State.RING, Unit.ONE, 1e-4),

  /** Power that the engine gives, over the greatest that it can. */
  ENGINE("engine", State.ENGINE, Unit.ONE, 1e-4),

  /** Gradient of the induced velocity along the nose, m/s, positive for more over the tail. */
  GRADIENT_NOSE("gradient along the nose", State.GRADIENT_NOSE, Unit.METRE_PER_SECOND, 1e-3),

  /** Gradient of the induced velocity to the right, m/s, positive for more on the left. */
  GRADIENT_RIGHT("gradient to the right", State.GRADIENT_RIGHT, Unit.METRE_PER_SECOND, 1e-3);

  private final String label;
  private final int place;
  private final Unit unit;
  private final double step;

  Coordinate(String label, int place, Unit unit, double step) {
    this.label = label;
    this.place = place;
    this.unit = unit;
    this.step = step;
  }

  /**
   * The coordinate in a word.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * Where it stands in the state.
   *
   * @return a place named in {@link State}
   */
  public int place() {
    return place;
  }

  /**
   * Its unit.
   *
   * @return an SI unit
   */
  public Unit unit() {
    return unit;
  }

  /** The step of its differences, in its unit. */
  double step() {
    return step;
  }
}
