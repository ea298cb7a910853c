package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The boundary of wake transport: the ring state is where the tip vortices are carried away from
 * the disc too slowly, (x / k)^2 + (z + v / 2)^2 &lt; eps^2.
 *
 * <p>Basset, Chen, Prasad and Kolb, Journal of the American Helicopter Society, 2008 (k = 4 and eps
 * = 0.2 from memory, unsure). Its authors used an induced velocity of the momentum kind; hence
 * {@link SmoothMomentum} unless another model is given. The choice matters: with the standard
 * constants the axial band is -0.41 to -1.01 on the climb root of momentum theory, to -0.97 on
 * {@link SmoothMomentum}, which leaves that root at -0.8, and -0.50 to -1.19 on {@link QuarticFit}
 * with k = 1. The boundary reaches x = k eps on any inflow, since z + v / 2 is zero somewhere in
 * the descent at every edgewise speed.
 */
public final class WakeTransport extends MadeOf implements BoundaryCriterion {

  /**
   * How much less the edgewise motion carries the vortices away than the axial motion. Default 4,
   * range 1 to 10 (a pure number).
   */
  public static final Parameter EDGEWISE_DIVISOR =
      Parameter.of(
          "wake transport edgewise divisor",
          Unit.ONE,
          1,
          10,
          4,
          "Basset, Chen, Prasad and Kolb, Journal of the American Helicopter Society, 2008 (from"
              + " memory, unsure)");

  /**
   * The speed below which the vortices stay at the disc. Default 0.2, range 0.05 to 0.4 (a pure
   * number).
   */
  public static final Parameter THRESHOLD =
      Parameter.of(
          "wake transport threshold speed",
          Unit.ONE,
          0.05,
          0.4,
          0.2,
          "Basset, Chen, Prasad and Kolb, Journal of the American Helicopter Society, 2008 (from"
              + " memory, unsure)");

  /** Every number in the criterion that may be set. */
  public static final List<Parameter> PARAMETERS = List.of(EDGEWISE_DIVISOR, THRESHOLD);

  private final InflowModel inflow;
  private final ParameterSet numbers;
  private final double divisor;
  private final double threshold;
  private final BandFinder finder;

  /**
   * Creates the criterion.
   *
   * @param inflow where the induced velocity comes from
   * @param parameters values for {@link #PARAMETERS}; others are ignored
   */
  public WakeTransport(InflowModel inflow, ParameterSet parameters) {
    super(inflow, parameters.only(PARAMETERS));
    numbers = parameters.only(PARAMETERS);
    this.inflow = inflow;
    this.divisor = parameters.get(EDGEWISE_DIVISOR);
    this.threshold = parameters.get(THRESHOLD);
    this.finder = new BandFinder(this, inflow.axialRange());
  }

  /**
   * Creates the criterion with its standard constants.
   *
   * @param inflow where the induced velocity comes from
   */
  public WakeTransport(InflowModel inflow) {
    this(inflow, ParameterSet.standard(PARAMETERS));
  }

  /**
   * The criterion with its standard constants, on {@link SmoothMomentum}.
   *
   * @return the criterion
   */
  public static WakeTransport standard() {
    return new WakeTransport(SmoothMomentum.standard());
  }

  /**
   * The numbers of the criterion.
   *
   * @return a value for each of {@link #PARAMETERS}
   */
  public ParameterSet numbers() {
    return numbers;
  }

  /**
   * Where the induced velocity comes from.
   *
   * @return the inflow model
   */
  public InflowModel inflow() {
    return inflow;
  }

  @Override
  public String name() {
    return "wake-transport";
  }

  /** {@inheritDoc} Here (x / k)^2 + (z + v / 2)^2 - eps^2. */
  @Override
  public double margin(double edgewise, double axial) {
    double along = edgewise / divisor;
    double through = axial + 0.5 * inflow.induced(edgewise, axial);
    return along * along + through * through - threshold * threshold;
  }

  @Override
  public List<RingBand> bands(double edgewise) {
    return finder.bands(edgewise);
  }

  /** {@inheritDoc} If the inflow model ends inside the ring state, the edge of its range. */
  @Override
  public OptionalDouble reach() {
    double edge = inflow.edgewiseRange().high();
    double search = 1.25 * divisor * threshold;
    return finder.reach(Math.min(edge, search), edge <= search);
  }
}
