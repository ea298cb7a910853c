package io.github.ringstate.validation.catalogue;

/** All solutions of the equation of momentum theory. */
@FunctionalInterface
public interface MomentumEquation {

  /**
   * The positive roots.
   *
   * @param edgewise edgewise speed, in hover induced velocities
   * @param axial axial speed, in hover induced velocities, positive in climb
   * @return the induced velocities, in rising order
   */
  double[] roots(double edgewise, double axial);
}
