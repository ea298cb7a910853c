package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The boundary of heave stability: the ring state is where d(total)/d(axial) &lt; 0. There a faster
 * sink brings more flow down through the disc, hence a smaller angle of attack at the blades and
 * less thrust, and the sink grows at constant collective.
 *
 * <p>Johnson, Model for Vortex Ring State Influence on Rotorcraft Flight Dynamics,
 * NASA/TP-2005-213477, 2005. The margin is the slope itself: +0.5 in hover by momentum theory.
 */
public final class HeaveDamping extends MadeOf implements BoundaryCriterion {

  /** From here on every model is momentum theory, whose slope is positive. */
  private static final double WIDEST_SEARCH = 2;

  private final InflowModel inflow;
  private final BandFinder finder;

  /**
   * Creates the criterion.
   *
   * @param inflow whose slope is judged
   */
  public HeaveDamping(InflowModel inflow) {
    super(inflow);
    this.inflow = inflow;
    this.finder = new BandFinder(this, inflow.axialRange());
  }

  /**
   * Whose slope is judged.
   *
   * @return the inflow model
   */
  public InflowModel inflow() {
    return inflow;
  }

  @Override
  public BoundaryCriterion over(InflowModel other) {
    return new HeaveDamping(other);
  }

  @Override
  public String name() {
    return "heave-damping";
  }

  /** {@inheritDoc} Here the slope d(total)/d(axial) of the inflow model. */
  @Override
  public double margin(double edgewise, double axial) {
    return inflow.slope(edgewise, axial);
  }

  @Override
  public List<RingBand> bands(double edgewise) {
    return finder.bands(edgewise);
  }

  /** {@inheritDoc} If the inflow model ends inside the ring state, the edge of its range. */
  @Override
  public OptionalDouble reach() {
    double edge = inflow.edgewiseRange().high();
    return finder.reach(Math.min(edge, WIDEST_SEARCH), edge <= WIDEST_SEARCH);
  }
}
