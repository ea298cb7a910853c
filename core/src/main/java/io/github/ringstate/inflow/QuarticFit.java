package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;

/**
 * The fourth-degree fit to measured mean induced velocity in vertical descent: v = k - 1.125 z -
 * 1.372 z^2 - 1.718 z^3 - 0.655 z^4, for -2 &lt;= z &lt;= 0 in axial flow.
 *
 * <p>Leishman, Principles of Helicopter Aerodynamics, chapter 2 (coefficients from memory, checked
 * by arithmetic against the momentum values at both ends). The constant k is the induced power
 * factor in hover. Along the curve the slope of the total inflow falls to about +0.08 near z =
 * -0.95 and stays positive, so it has no runaway; at z = 0 it is -0.125 where momentum theory has
 * +0.5, which is a trait of the fit and not of rotors.
 */
public final class QuarticFit extends MadeOf implements InflowModel {

  /**
   * The induced power factor in hover, by which measured power exceeds the ideal. Default 1.15,
   * range 1 to 1.4 (a pure number).
   */
  public static final Parameter INDUCED_POWER_FACTOR =
      Parameter.of(
          "induced power factor in hover",
          Unit.ONE,
          1,
          1.4,
          1.15,
          "about 1.15 measured, 1 ideal: Leishman, Principles of Helicopter Aerodynamics, chapter 2"
              + " (from memory)");

  static final Quantity NO_EDGEWISE = HoverUnits.EDGEWISE.within(0, 0);
  static final Quantity DESCENT = HoverUnits.AXIAL.within(-2, 0);

  private static final double C1 = -1.125;
  private static final double C2 = -1.372;
  private static final double C3 = -1.718;
  private static final double C4 = -0.655;

  private final double factor;

  /**
   * Creates the fit.
   *
   * @param factor the induced power factor in hover, 1 to 1.4
   */
  public QuarticFit(double factor) {
    super(factor);
    this.factor = INDUCED_POWER_FACTOR.quantity().check(factor);
  }

  /**
   * The fit with the induced power factor 1.15.
   *
   * @return the model
   */
  public static QuarticFit standard() {
    return new QuarticFit(INDUCED_POWER_FACTOR.standard());
  }

  /**
   * The induced power factor of the fit.
   *
   * @return the factor in hover, 1 without losses
   */
  public double factor() {
    return factor;
  }

  @Override
  public String name() {
    return "quartic-fit";
  }

  /** {@inheritDoc} Zero only: the measurements were in axial flow. */
  @Override
  public Quantity edgewiseRange() {
    return NO_EDGEWISE;
  }

  @Override
  public Quantity axialRange() {
    return DESCENT;
  }

  @Override
  public double induced(double edgewise, double axial) {
    NO_EDGEWISE.check(edgewise);
    double z = DESCENT.check(axial);
    return factor + z * (C1 + z * (C2 + z * (C3 + z * C4)));
  }

  @Override
  public double slope(double edgewise, double axial) {
    NO_EDGEWISE.check(edgewise);
    double z = DESCENT.check(axial);
    return 1 + C1 + z * (2 * C2 + z * (3 * C3 + z * 4 * C4));
  }

  /** {@inheritDoc} All: the curve was measured. */
  @Override
  public double lossShare(double edgewise, double axial) {
    NO_EDGEWISE.check(edgewise);
    DESCENT.check(axial);
    return 1;
  }
}
