package io.github.ringstate.inflow;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.List;

/**
 * Says in which working state a rotor is, by an inflow model and a boundary criterion.
 *
 * <p>Where the total inflow is zero or upward the state is windmill brake, also if the criterion
 * has no exit: the two states meet at the autorotation point (see {@link Autorotation}), which in
 * vertical flight lies a little above the ideal windmill limit z = -2. Otherwise a negative margin
 * is the vortex ring state, a descent faster than all bands is the turbulent wake state, and the
 * rest is the normal working state; at edgewise speeds without a band there is no turbulent wake
 * state.
 *
 * @param inflow gives the total inflow
 * @param criterion gives the boundary of the vortex ring state
 */
public record WorkingStates(InflowModel inflow, BoundaryCriterion criterion) {

  /**
   * The working state at a point. In descent outside the ring state it needs the criterion's bands
   * and costs as much as they do.
   *
   * @param edgewise edgewise speed, in hover induced velocities, not negative
   * @param axial axial speed, in hover induced velocities, positive in climb
   * @return the state
   * @throws OutOfRangeException if the inflow model does not hold there, or an argument is not a
   *     number
   */
  public WorkingState at(double edgewise, double axial) {
    if (!(inflow.total(edgewise, axial) > 0)) {
      return WorkingState.WINDMILL_BRAKE;
    }
    if (criterion.margin(edgewise, axial) < 0) {
      return WorkingState.VORTEX_RING;
    }
    if (axial >= 0) {
      return WorkingState.NORMAL_WORKING;
    }
    List<RingBand> bands = criterion.bands(edgewise);
    boolean past = !bands.isEmpty() && axial < bands.get(bands.size() - 1).onset();
    return past ? WorkingState.TURBULENT_WAKE : WorkingState.NORMAL_WORKING;
  }
}
