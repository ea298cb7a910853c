package io.github.ringstate.inflow;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** The ideal autorotation point: no mean flow through the disc, hence no induced power. */
public final class Autorotation {

  /** Deeper than this the flow is upward through every rotor. */
  private static final double DEEPEST = -4;

  private Autorotation() {}

  /**
   * The axial speed at which the total inflow is zero.
   *
   * @param inflow the inflow model
   * @param edgewise edgewise speed, in hover induced velocities, not negative
   * @return axial speed, in hover induced velocities, negative; empty if the model's descent ends
   *     before the total inflow has come down to zero
   * @throws OutOfRangeException if the model does not hold between hover and there
   */
  public static OptionalDouble axialSpeed(InflowModel inflow, double edgewise) {
    double top = Math.min(0, inflow.axialRange().high());
    double bottom = Math.max(DEEPEST, inflow.axialRange().low());
    if (inflow.total(edgewise, bottom) > 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        new BracketingNthOrderBrentSolver(1e-13, 1e-13, 5)
            .solve(300, z -> inflow.total(edgewise, z), bottom, top, AllowedSolution.ANY_SIDE));
  }

  /**
   * The drag coefficient of a disc that sinks as fast as the rotor under the same weight: T = CD
   * rho V^2 A / 2 and T = 2 rho A vh^2 give CD = 4 / z^2.
   *
   * @param axial axial speed of the vertical descent, in hover induced velocities, negative
   * @return drag coefficient on the disc area, a pure number
   * @throws IllegalArgumentException if the axial speed is not negative
   */
  public static double discDragCoefficient(double axial) {
    if (!(axial < 0)) {
      throw new IllegalArgumentException(
          "the axial speed of a descent must be below 0 hover induced velocities, not " + axial);
    }
    return 4 / (axial * axial);
  }
}
