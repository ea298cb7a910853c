package io.github.ringstate.inflow;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;

/** The two speeds that every inflow model takes, and the widest range in which any of them does. */
final class HoverUnits {

  /**
   * Wide, because a rotor that carries little thrust has a small hover induced velocity to divide
   * by.
   */
  static final double WIDEST = 200;

  static final Quantity EDGEWISE =
      new Quantity("edgewise speed over hover induced velocity", Unit.ONE, 0, WIDEST);

  static final Quantity AXIAL =
      new Quantity("axial speed over hover induced velocity", Unit.ONE, -WIDEST, WIDEST);

  private HoverUnits() {}

  /** Refuses what is outside either range. */
  static void check(double edgewise, double axial) {
    EDGEWISE.check(edgewise);
    AXIAL.check(axial);
  }
}
