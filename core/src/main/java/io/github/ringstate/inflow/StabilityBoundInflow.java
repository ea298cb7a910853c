package io.github.ringstate.inflow;

import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.Stream;

/**
 * Momentum theory extended by the boundary of heave stability, as Johnson does in Model for Vortex
 * Ring State Influence on Rotorcraft Flight Dynamics, NASA/TP-2005-213477, 2005: an alternative to
 * compare {@link RingStateInflow} with.
 *
 * <p>The report's text was not at hand. Its abstract says that the model is a parametric extension
 * of momentum theory, for the mean inflow of a rotor, defined primarily by the stability boundary
 * of the motion. From memory, and unsure, are: in axial descent four speeds D, N, X and E, with
 * polynomials of third order between them; the extension begins at D and ends at E; at N and X
 * d(total)/d(axial) is zero, and between them negative; the boundary closes at an edgewise speed M.
 * Not remembered, and therefore chosen here, are the total inflow at N and X, how the boundary
 * closes, and what momentum theory is bridged with. So this is a model after that report, and its
 * results are not those of the report.
 *
 * <pre>
 *   h(x) = 1 - (x / xM)^2 for x &lt; xM; beyond, w = S(x, z)
 *   zM   = (zN0 + zX0) / 2
 *   zi   = zM + h (zi0 - zM)                     for i = D, N, X, E; zi0 in axial descent
 *   wN   = S(x, zD) + h (wN0 - S(0, zD0)) S'(x, zD) / S'(0, zD0)
 *   wX   = wN + h (wX0 - wN0)
 *   w    = cubics through D, N, X, E with slopes S'(x, zD), 0, 0, S'(x, zE); S outside
 * </pre>
 *
 * with S the total inflow of {@link SmoothMomentum}, which unlike the report's cubic ({@link
 * CubicBridge}) has no jump that a flight would stick at. The boundary of heave stability is
 * exactly zN(x) to zX(x): none of the cubics turns over between its ends, as the fall from D to N
 * keeps to the slope at D. The inflow is continuous, with a continuous slope along the axial speed.
 *
 * <p>There is no memory of an earlier ring, and the factor on induced power applies in full ({@link
 * #lossShare} is 0): as for momentum theory, and assumed. Accepts 0 to 200 edgewise and -200 to 200
 * axial.
 */
public final class StabilityBoundInflow extends MadeOf implements InflowModel {

  private static final String REPORT = "Johnson, NASA/TP-2005-213477, 2005 (from memory, unsure)";

  /**
   * Where the extension begins in axial descent, D. Default -0.2, range -0.35 to -0.05 (a pure
   * number).
   */
  public static final Parameter UPPER_END =
      Parameter.of("upper end of the extension", Unit.ONE, -0.35, -0.05, -0.2, REPORT);

  /**
   * Where damping is lost in axial descent, N. Default -0.45, range -0.8 to -0.3 (a pure number).
   */
  public static final Parameter LOST_AXIAL =
      Parameter.of("axial speed where damping is lost", Unit.ONE, -0.8, -0.3, -0.45, REPORT);

  /** Total inflow there. Default 0.85, range 0.6 to 0.95 (a pure number). */
  public static final Parameter LOST_TOTAL =
      Parameter.of(
          "total inflow where damping is lost",
          Unit.ONE,
          0.6,
          0.95,
          0.85,
          "chosen: between momentum theory, 0.80, and the quartic fit, 0.91");

  /** Where damping returns in axial descent, X. Default -1.5, range -1.8 to -1 (a pure number). */
  public static final Parameter BACK_AXIAL =
      Parameter.of("axial speed where damping returns", Unit.ONE, -1.8, -1, -1.5, REPORT);

  /** Total inflow there. Default 1, range 0.8 to 1.5 (a pure number). */
  public static final Parameter BACK_TOTAL =
      Parameter.of(
          "total inflow where damping returns",
          Unit.ONE,
          0.8,
          1.5,
          1,
          "chosen: the two-segment fit, Young, RAE TR 78125, 1978, with a factor of 1 (from memory)");

  /**
   * Where the extension ends in axial descent, E. Default -2, range -2.2 to -1.85 (a pure number).
   */
  public static final Parameter LOWER_END =
      Parameter.of("lower end of the extension", Unit.ONE, -2.2, -1.85, -2, REPORT);

  /**
   * Edgewise speed at which the boundary closes, M. Default 0.95, range 0.6 to 1.2 (a pure number).
   */
  public static final Parameter CLOSED_EDGEWISE =
      Parameter.of("edgewise speed where the boundary closes", Unit.ONE, 0.6, 1.2, 0.95, REPORT);

  /** Every number in the model that may be set. */
  public static final List<Parameter> PARAMETERS =
      Stream.concat(
              Stream.of(
                  UPPER_END,
                  LOST_AXIAL,
                  LOST_TOTAL,
                  BACK_AXIAL,
                  BACK_TOTAL,
                  LOWER_END,
                  CLOSED_EDGEWISE),
              SmoothMomentum.PARAMETERS.stream())
          .toList();

  private final ParameterSet numbers;
  private final SmoothMomentum smooth;
  private final double closed;
  private final double middle;
  private final double upper;
  private final double lost;
  private final double back;
  private final double lower;
  private final double fall;
  private final double rise;

  /**
   * Creates the model.
   *
   * @param parameters values for {@link #PARAMETERS}; others are ignored
   * @throws IncompatibleValuesException if N is not below D, or the total inflow does not fall from
   *     D to N by a third of the slope at D or more, and rise from N to X
   */
  public StabilityBoundInflow(ParameterSet parameters) {
    super(parameters.only(PARAMETERS));
    numbers = parameters.only(PARAMETERS);
    smooth = new SmoothMomentum(parameters);
    closed = parameters.get(CLOSED_EDGEWISE);
    upper = parameters.get(UPPER_END);
    lost = parameters.get(LOST_AXIAL);
    back = parameters.get(BACK_AXIAL);
    lower = parameters.get(LOWER_END);
    middle = (lost + back) / 2;
    double slopeAtUpper = smooth.axialSlope(upper);
    double drop = smooth.axialTotal(upper) - parameters.get(LOST_TOTAL);
    fall = drop / slopeAtUpper;
    rise = parameters.get(BACK_TOTAL) - parameters.get(LOST_TOTAL);
    // the ranges keep N above X and X above E
    if (!(upper > lost)) {
      throw new IncompatibleValuesException(
          "the "
              + LOST_AXIAL.name()
              + " "
              + lost
              + " must be below the "
              + UPPER_END.name()
              + " "
              + upper
              + " hover induced velocities");
    }
    // a cubic with a slope beyond three times its chord turns over (Fritsch and Carlson, SIAM
    // Journal on Numerical Analysis 17, 1980; from memory)
    double least = (upper - lost) * slopeAtUpper / 3;
    if (!(drop >= least && rise > 0)) {
      throw new IncompatibleValuesException(
          "the "
              + LOST_TOTAL.name()
              + " "
              + parameters.get(LOST_TOTAL)
              + " must be at most "
              + (smooth.axialTotal(upper) - least)
              + " and below the "
              + BACK_TOTAL.name()
              + " "
              + parameters.get(BACK_TOTAL)
              + " hover induced velocities");
    }
  }

  /**
   * The model with its standard values.
   *
   * @return the model
   */
  public static StabilityBoundInflow standard() {
    return new StabilityBoundInflow(ParameterSet.standard(PARAMETERS));
  }

  /**
   * The numbers of the model.
   *
   * @return a value for each of {@link #PARAMETERS}
   */
  @Override
  public ParameterSet numbers() {
    return numbers;
  }

  @Override
  public String name() {
    return "stability-bound";
  }

  @Override
  public double induced(double edgewise, double axial) {
    double x = HoverUnits.EDGEWISE.check(edgewise);
    double z = HoverUnits.AXIAL.check(axial);
    double h = open(x);
    if (!(h > 0 && z < place(h, upper) && z > place(h, lower))) {
      return smooth.inducedAt(x, z);
    }
    double zd = place(h, upper);
    double zn = place(h, lost);
    double zx = place(h, back);
    double vd = smooth.inducedAt(x, zd);
    double slopeAtUpper = smooth.slopeAt(x, zd);
    double wn = zd + vd - h * fall * slopeAtUpper;
    double wx = wn + h * rise;
    if (z > zn) {
      return Hermite.value(zn, wn, 0, zd, zd + vd, slopeAtUpper, z) - z;
    }
    if (z > zx) {
      return Hermite.value(zx, wx, 0, zn, wn, 0, z) - z;
    }
    double ze = place(h, lower);
    double we = ze + smooth.inducedAt(x, ze);
    return Hermite.value(ze, we, smooth.slopeAt(x, ze), zx, wx, 0, z) - z;
  }

  @Override
  public double slope(double edgewise, double axial) {
    double x = HoverUnits.EDGEWISE.check(edgewise);
    double z = HoverUnits.AXIAL.check(axial);
    double h = open(x);
    if (!(h > 0 && z < place(h, upper) && z > place(h, lower))) {
      return smooth.slopeAt(x, z);
    }
    double zd = place(h, upper);
    double zn = place(h, lost);
    double zx = place(h, back);
    double wd = zd + smooth.inducedAt(x, zd);
    double slopeAtUpper = smooth.slopeAt(x, zd);
    double wn = wd - h * fall * slopeAtUpper;
    double wx = wn + h * rise;
    if (z > zn) {
      return Hermite.slope(zn, wn, 0, zd, wd, slopeAtUpper, z);
    }
    if (z > zx) {
      return Hermite.slope(zx, wx, 0, zn, wn, 0, z);
    }
    double ze = place(h, lower);
    double we = ze + smooth.inducedAt(x, ze);
    return Hermite.slope(ze, we, smooth.slopeAt(x, ze), zx, wx, 0, z);
  }

  /** {@inheritDoc} None, as in momentum theory: assumed. */
  @Override
  public double lossShare(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    return 0;
  }

  private double open(double x) {
    double part = x / closed;
    return 1 - part * part;
  }

  private double place(double h, double axial) {
    return middle + h * (axial - middle);
  }
}
