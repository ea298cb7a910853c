package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Quantity;

/**
 * The two straight lines through measured mean induced velocity in vertical descent: v = k (1 - z)
 * for -1.5 &lt;= z &lt;= 0 and v = k (7 + 3 z) for -2 &lt;= z &lt;= -1.5, in axial flow.
 *
 * <p>Young, A note on the velocity induced by a helicopter rotor in the vortex ring state, RAE TR
 * 78125, 1978 (from memory; also in the textbooks of Leishman and Padfield). The slope of the total
 * inflow jumps at z = -1.5; above it is 1 - k, so that a rotor on this line has no heave damping at
 * all for k = 1 and a negative one for k &gt; 1.
 */
public final class TwoSegmentFit extends MadeOf implements InflowModel {

  private static final double KNEE = -1.5;

  private final double factor;

  /**
   * Creates the fit.
   *
   * @param factor the induced power factor in hover, 1 to 1.4
   */
  public TwoSegmentFit(double factor) {
    super(factor);
    this.factor = QuarticFit.INDUCED_POWER_FACTOR.quantity().check(factor);
  }

  /**
   * The fit with the induced power factor 1.15.
   *
   * @return the model
   */
  public static TwoSegmentFit standard() {
    return new TwoSegmentFit(QuarticFit.INDUCED_POWER_FACTOR.standard());
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
    return "two-segment-fit";
  }

  /** {@inheritDoc} Zero only: the measurements were in axial flow. */
  @Override
  public Quantity edgewiseRange() {
    return QuarticFit.NO_EDGEWISE;
  }

  @Override
  public Quantity axialRange() {
    return QuarticFit.DESCENT;
  }

  @Override
  public double induced(double edgewise, double axial) {
    QuarticFit.NO_EDGEWISE.check(edgewise);
    double z = QuarticFit.DESCENT.check(axial);
    return factor * (z >= KNEE ? 1 - z : 7 + 3 * z);
  }

  /** {@inheritDoc} At z = -1.5 that of the upper line. */
  @Override
  public double slope(double edgewise, double axial) {
    QuarticFit.NO_EDGEWISE.check(edgewise);
    double z = QuarticFit.DESCENT.check(axial);
    return z >= KNEE ? 1 - factor : 1 + 3 * factor;
  }

  /** {@inheritDoc} All: the curve was measured. */
  @Override
  public double lossShare(double edgewise, double axial) {
    QuarticFit.NO_EDGEWISE.check(edgewise);
    QuarticFit.DESCENT.check(axial);
    return 1;
  }
}
