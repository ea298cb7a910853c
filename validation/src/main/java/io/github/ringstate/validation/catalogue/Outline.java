package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.RingBand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The boundary of the ring state as a line from the onset in vertical flight to the exit.
 *
 * @param edgewise edgewise speeds, in hover induced velocities
 * @param axial axial speeds, in hover induced velocities, negative
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to a plot
record Outline(double[] edgewise, double[] axial) {

  private static final int POINTS = 60;

  /** Follows a closed boundary. */
  static Outline of(BoundaryCriterion criterion) {
    double reach = criterion.reach().orElse(0);
    List<double[]> upper = new ArrayList<>();
    List<double[]> lower = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      // Closer together towards the end, where the line turns back.
      double t = 1 - Math.pow(1 - (double) i / POINTS, 2);
      double x = t * reach * (1 - 1e-9);
      Optional<RingBand> band = criterion.band(x);
      if (band.isPresent() && band.get().exit().isPresent()) {
        upper.add(new double[] {x, band.get().onset()});
        lower.add(0, new double[] {x, band.get().exit().getAsDouble()});
      }
    }
    upper.addAll(lower);
    return new Outline(
        upper.stream().mapToDouble(p -> p[0]).toArray(),
        upper.stream().mapToDouble(p -> p[1]).toArray());
  }

  /** The same line with both speeds multiplied. */
  Outline scaled(double edgewiseFactor, double axialFactor) {
    return new Outline(
        java.util.Arrays.stream(edgewise).map(x -> x * edgewiseFactor).toArray(),
        java.util.Arrays.stream(axial).map(z -> z * axialFactor).toArray());
  }
}
