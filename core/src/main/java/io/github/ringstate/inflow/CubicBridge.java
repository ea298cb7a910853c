package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;

/**
 * Momentum theory with a cubic over its singularity: v = z (0.373 z^2 + 0.598 x^2 - 1.991) where
 * 1.5 x^2 + (2 z + 3)^2 &lt; 1.
 *
 * <p>Johnson, Model for Vortex Ring State Influence on Rotorcraft Flight Dynamics,
 * NASA/TP-2005-213477, 2005 (formula from memory; its coefficients were checked by their continuity
 * with momentum theory on the edge of the ellipse). Outside the ellipse the largest root of
 * momentum theory above z = -1.5 and the smallest below. Induced velocity jumps on the edge: by up
 * to 0.03 at its tip and by up to 0.061 on its lower half. It removes the singularity and adds no
 * ring state.
 */
public final class CubicBridge extends MadeOf implements InflowModel {

  private static final double AXIAL_CUBED = 0.373;
  private static final double MIXED = 0.598;
  private static final double AXIAL_LINEAR = -1.991;

  /** Creates the model; it has no parameters. */
  public CubicBridge() {}

  /**
   * Whether the cubic holds at a point.
   *
   * @param edgewise edgewise speed x, in hover induced velocities
   * @param axial axial speed z, in hover induced velocities, positive in climb
   * @return true inside the ellipse 1.5 x^2 + (2 z + 3)^2 = 1
   */
  static boolean inside(double edgewise, double axial) {
    double depth = 2 * axial + 3;
    return 1.5 * edgewise * edgewise + depth * depth < 1;
  }

  @Override
  public String name() {
    return "cubic-bridge";
  }

  @Override
  public double induced(double edgewise, double axial) {
    double x = HoverUnits.EDGEWISE.check(edgewise);
    double z = HoverUnits.AXIAL.check(axial);
    if (inside(x, z)) {
      return z * (AXIAL_CUBED * z * z + MIXED * x * x + AXIAL_LINEAR);
    }
    return z > -1.5 ? MomentumRoots.largest(x, z) : MomentumRoots.smallest(x, z);
  }

  @Override
  public double slope(double edgewise, double axial) {
    double v = induced(edgewise, axial);
    return inside(edgewise, axial)
        ? 1 + 3 * AXIAL_CUBED * axial * axial + MIXED * edgewise * edgewise + AXIAL_LINEAR
        : MomentumTheory.slopeAt(axial, v);
  }

  /** {@inheritDoc} None: the cubic joins ideal curves at both ends. */
  @Override
  public double lossShare(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    return 0;
  }
}
