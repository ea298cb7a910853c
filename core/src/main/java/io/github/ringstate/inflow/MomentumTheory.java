package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Quantity;

/**
 * Momentum theory: v sqrt(x^2 + (z + v)^2) = 1.
 *
 * <p>Rankine and Froude for axial flow, Glauert for the combined form; any rotorcraft textbook. It
 * assumes a slipstream that passes through the disc in one direction. It is accepted
 *
 * <ul>
 *   <li>for z &gt;= 0 at any edgewise speed (the normal working state),
 *   <li>for z &lt;= -2 at any edgewise speed (the windmill brake state, the smallest root),
 *   <li>at any axial speed once the edgewise speed is {@link #singleRootEdgewise()} or more, where
 *       the equation has one root everywhere.
 * </ul>
 *
 * <p>In between it is refused: there the equation has either no slipstream behind its root or three
 * roots to choose from. {@link SmoothMomentum} and the other models bridge that gap.
 *
 * <p>Roots are accurate to about 1e-15 divided by the slope of the axial speed over the total
 * inflow, 1 + w v^3. That slope is near zero only beside the corner x = 0.6204, z = -1.7547, where
 * three roots fall together and no input given in double precision fixes the root to more than six
 * digits.
 */
public final class MomentumTheory extends MadeOf implements InflowModel {

  /** The quantity in whose name the gap between hover and windmill brake is refused. */
  private static final Quantity EDGEWISE_IN_GAP =
      new Quantity(
          "edgewise speed over hover induced velocity, in momentum theory at axial speeds between"
              + " -2 and 0,",
          HoverUnits.EDGEWISE.unit(),
          MomentumRoots.SINGLE_ROOT_EDGEWISE,
          HoverUnits.WIDEST);

  /** Creates the model; it has no parameters. */
  public MomentumTheory() {}

  /**
   * The edgewise speed from which the equation has one root at every axial speed. With z = w - 1 /
   * sqrt(x^2 + w^2), dz/dw = 1 + w / (x^2 + w^2)^1.5 is least at w = -x / sqrt 2, where it is 1 - 2
   * / (3 sqrt 3 x^2).
   *
   * @return sqrt(2 / (3 sqrt 3)), about 0.6204 hover induced velocities
   */
  public static double singleRootEdgewise() {
    return MomentumRoots.SINGLE_ROOT_EDGEWISE;
  }

  /**
   * Every root of the equation, whether or not a slipstream stands behind it.
   *
   * @param edgewise edgewise speed x, in hover induced velocities, 0 to 200
   * @param axial axial speed z, in hover induced velocities, -200 to 200, positive in climb
   * @return the induced velocities in rising order, in hover induced velocities: one, three, or two
   *     where two of three coincide
   * @throws OutOfRangeException if an argument is outside its range or not a number
   */
  public static double[] roots(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    return MomentumRoots.all(edgewise, axial);
  }

  @Override
  public String name() {
    return "momentum-theory";
  }

  /**
   * {@inheritDoc} Between the axial speeds -2 and 0 the edgewise speed is to be {@link
   * #singleRootEdgewise()} or more.
   */
  @Override
  public double induced(double edgewise, double axial) {
    check(edgewise, axial);
    return MomentumRoots.smallest(edgewise, axial);
  }

  private static void check(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    if (axial < 0 && axial > -2) {
      EDGEWISE_IN_GAP.check(edgewise);
    }
  }

  /** {@inheritDoc} Infinite at x = 0, z = -2. */
  @Override
  public double slope(double edgewise, double axial) {
    return slopeAt(axial, induced(edgewise, axial));
  }

  /** d(total)/d(axial) along a root: 1 / (1 + w / (x^2 + w^2)^1.5), and v = 1 / sqrt(x^2 + w^2). */
  static double slopeAt(double z, double v) {
    return 1 / (1 + (z + v) * v * v * v);
  }

  /** {@inheritDoc} None: momentum theory is the ideal. */
  @Override
  public double lossShare(double edgewise, double axial) {
    check(edgewise, axial);
    return 0;
  }
}
