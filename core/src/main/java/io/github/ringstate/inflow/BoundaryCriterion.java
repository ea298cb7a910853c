package io.github.ringstate.inflow;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A rule that says where the vortex ring state begins and ends.
 *
 * <p>Published rules differ, and the boundary depends on the inflow model as much as on the rule
 * (Basset, Chen, Prasad and Kolb, Journal of the American Helicopter Society, 2008). All speeds are
 * in hover induced velocities; axial speeds are negative in descent.
 */
public interface BoundaryCriterion {

  /**
   * The criterion's name.
   *
   * @return a few lower-case words joined by hyphens, for instance {@code heave-damping}
   */
  String name();

  /**
   * Whether the speeds of a flight that it judges are those of its path, the level airspeed and the
   * vertical speed that instruments show, and being slower or sinking faster is enough for it; or
   * those through the disc, which may be tilted, of a descent that is building.
   *
   * @return false unless overridden
   */
  default boolean isOfPath() {
    return false;
  }

  /**
   * The same criterion over another inflow model.
   *
   * @param inflow the model
   * @return a criterion that is read off the model, if this one is read off a model; else this one
   */
  default BoundaryCriterion over(InflowModel inflow) {
    return this;
  }

  /**
   * How far a point lies outside the vortex ring state, on the criterion's own scale. Continuous if
   * the inflow model's slope is.
   *
   * @param edgewise edgewise speed, in hover induced velocities, not negative
   * @param axial axial speed, in hover induced velocities, positive in climb
   * @return negative inside the ring state, zero on the boundary, positive outside; a pure number
   * @throws OutOfRangeException if the inflow model does not hold there, or an argument is not a
   *     number
   */
  double margin(double edgewise, double axial);

  /**
   * Every band of axial speeds in the ring state at one edgewise speed. One call costs about a
   * thousand margins; inside a simulation use {@link #margin}.
   *
   * @param edgewise edgewise speed, in hover induced velocities, not negative
   * @return the bands from slow to fast descent; empty where the criterion finds none
   * @throws OutOfRangeException if the inflow model does not hold there, or the argument is not a
   *     number
   */
  List<RingBand> bands(double edgewise);

  /**
   * The widest band of axial speeds in the ring state at one edgewise speed; of several equally
   * wide, or of several without an exit, the one of the slowest descent.
   *
   * @param edgewise edgewise speed, in hover induced velocities, not negative
   * @return the band; empty where the criterion finds none
   * @throws OutOfRangeException if the inflow model does not hold there, or the argument is not a
   *     number
   */
  default Optional<RingBand> band(double edgewise) {
    RingBand widest = null;
    for (RingBand band : bands(edgewise)) {
      if (widest == null || width(band) > width(widest)) {
        widest = band;
      }
    }
    return Optional.ofNullable(widest);
  }

  /**
   * The greatest edgewise speed at which there is a band.
   *
   * @return the speed, in hover induced velocities; infinite if the boundary does not close; empty
   *     if there is no ring state at all
   * @throws OutOfRangeException if the inflow model does not hold somewhere on the way
   */
  OptionalDouble reach();

  private static double width(RingBand band) {
    return band.exit().isPresent()
        ? band.onset() - band.exit().getAsDouble()
        : Double.POSITIVE_INFINITY;
  }
}
