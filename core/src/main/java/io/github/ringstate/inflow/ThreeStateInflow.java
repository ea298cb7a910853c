package io.github.ringstate.inflow;

/**
 * Any steady inflow with the three-state dynamic inflow of Pitt and Peters over it: besides the
 * mean, the induced velocity has a gradient across the disc, which the skewed wake makes and which
 * acts back on the mean (Pitt and Peters, Vertica 5, 1981; Peters and HaQuang, Journal of the
 * American Helicopter Society 33, 1988; matrices from memory).
 *
 * <p>Steady mean induced velocity, losses and ring are those of the model beneath, to the bit. What
 * changes is how the mean comes to its steady value in edgewise flight: steady flight has a
 * gradient of (15 pi / 32) tan(chi / 2) times the mean, chi the skew of the wake, and after a
 * change the two seek it together. In axial flow the gradient is zero and a flight is the same to
 * the bit as with the model beneath.
 *
 * <p>What coupling means for a point mass: its attitude is commanded, and it has no hub moments. A
 * rotor whose disc follows its commands without moments at the hub drives the gradient by the skew
 * alone, in the direction of flight; the sine state of an axis system along the flow stays zero. A
 * gradient across the disc along the flow adds nothing to the mean thrust of blade element theory,
 * so it is felt through the inflow equations alone. Moments that a gradient would put on a craft
 * with stiff blades are not part of the model.
 */
public final class ThreeStateInflow extends InflowOver {

  /**
   * Puts three-state dynamics over a model.
   *
   * @param model the steady inflow
   */
  public ThreeStateInflow(InflowModel model) {
    super(model);
  }

  @Override
  public boolean hasGradient() {
    return true;
  }

  @Override
  public String name() {
    return "three-state-" + model().name();
  }
}
