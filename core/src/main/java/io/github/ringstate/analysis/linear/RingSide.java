package io.github.ringstate.analysis.linear;

import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;

/**
 * The side of a steady descent within the ring on which a disturbance falls.
 *
 * <p>The {@linkplain io.github.ringstate.inflow.RingMemory memory} of the ring switches within a
 * narrow width b about a steady descent, z = s. A linear model holds a little to one side of the
 * switch: where the level s is 2 b above z and the ring follows the flow, or 2 b below and the ring
 * is held and dissolves. On the second side the ring is that of a flow deeper by b, so the state is
 * not quite in balance; {@link LinearModel#rates} says by how much.
 */
public enum RingSide {
  /** A faster sink: the ring is that of the flow of the instant. */
  DEEPENING(2),

  /** A slower sink: the ring that was there is held and dissolves. */
  DISSOLVING(-2);

  private final double widths;

  RingSide(double widths) {
    this.widths = widths;
  }

  /**
   * A state with the ring's level to this side.
   *
   * @param equations the equations of motion
   * @param state the state, in the order of {@link State}
   * @return the same with another level
   */
  public double[] of(EquationsOfMotion equations, double[] state) {
    Motion at = equations.at(0, state);
    double thrust = at.loads().thrust();
    double scale =
        equations.craft().rotor().hoverInducedVelocity(thrust, equations.air().density());
    double width = equations.inflow().ring().memory().switchWidth();
    double[] changed = state.clone();
    changed[State.RING] = at.loads().axial() / scale + widths * width;
    return changed;
  }
}
