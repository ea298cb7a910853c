package io.github.ringstate.inflow;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.ArrayList;
import java.util.List;

/**
 * An inflow model sampled along the axial speed at one edgewise speed.
 *
 * @param model the model's name
 * @param edgewise edgewise speed, in hover induced velocities
 * @param points the samples, in the order asked for
 */
public record InflowCurve(String model, double edgewise, List<Point> points) {

  /** Keeps the points from change. */
  public InflowCurve {
    points = List.copyOf(points);
  }

  /**
   * One sample. Speeds are in hover induced velocities.
   *
   * @param axial axial speed z, positive in climb
   * @param induced induced velocity v
   * @param total total inflow z + v
   * @param slope d(total)/d(axial), a pure number
   */
  public record Point(double axial, double induced, double total, double slope) {}

  /**
   * Samples a model at even spacing, both ends included. No point is left out: where the model does
   * not hold, sampling fails.
   *
   * @param model the model
   * @param edgewise edgewise speed, in hover induced velocities
   * @param fromAxial axial speed of the first point, in hover induced velocities, positive in climb
   * @param toAxial axial speed of the last point, in the same unit, above or below the first
   * @param count the number of points, 2 or more
   * @return the curve
   * @throws OutOfRangeException if the model does not hold at one of the points
   * @throws IllegalArgumentException if there are fewer than two points
   */
  public static InflowCurve sample(
      InflowModel model, double edgewise, double fromAxial, double toAxial, int count) {
    if (count < 2) {
      throw new IllegalArgumentException("a curve needs at least 2 points, not " + count);
    }
    List<Point> points = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      double t = (double) i / (count - 1);
      double z = (1 - t) * fromAxial + t * toAxial;
      points.add(
          new Point(
              z, model.induced(edgewise, z), model.total(edgewise, z), model.slope(edgewise, z)));
    }
    return new InflowCurve(model.name(), edgewise, points);
  }
}
