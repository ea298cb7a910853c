package io.github.ringstate.craft;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The low-speed part of a height-velocity diagram, as a flight manual shows it: the combinations of
 * airspeed and height to avoid, from which an engine failure cannot be expected to end in a landing
 * without damage. The part at high speed near the ground is not held here.
 *
 * <p>The points run along the curve from its upper end through the knee to its lower end. The area
 * to avoid lies between curve and zero airspeed. An upper end that is not at zero airspeed is
 * carried level to it; a lower end that is not is carried down to the ground, so that a curve of
 * which only the upper part was copied bounds too much rather than too little (assumed).
 *
 * @param points the points, upper end first; none if no curve is known
 */
public record HeightVelocityCurve(List<Point> points) {

  /** Airspeeds of points. */
  public static final Quantity AIRSPEED = new Quantity("airspeed of a point", Unit.KNOT, 0, 200);

  /** Heights of points. */
  public static final Quantity HEIGHT = new Quantity("height of a point", Unit.FOOT, 0, 5000);

  /** No curve is known. */
  public static final HeightVelocityCurve NONE = new HeightVelocityCurve(List.of());

  /**
   * A point of the curve.
   *
   * @param airspeed airspeed as the manual has it, calibrated, m/s, 0 to 200 kt
   * @param height height above the ground, m, 0 to 5000 ft
   */
  public record Point(double airspeed, double height) {

    /** Checks both. */
    public Point {
      AIRSPEED.check(Unit.KNOT.fromSi(airspeed));
      HEIGHT.check(Unit.FOOT.fromSi(height));
    }
  }

  /** Puts the upper end first. */
  public HeightVelocityCurve {
    List<Point> ordered = new ArrayList<>(points);
    if (ordered.size() > 1 && ordered.get(0).height < ordered.get(ordered.size() - 1).height) {
      Collections.reverse(ordered);
    }
    points = List.copyOf(ordered);
  }

  /**
   * Whether a curve is known.
   *
   * @return true if there are points
   */
  public boolean isKnown() {
    return !points.isEmpty();
  }

  /**
   * The airspeed below which a height is in the area to avoid.
   *
   * @param height height above the ground, m
   * @return the greatest airspeed in the area at this height, calibrated, m/s; empty where the area
   *     does not reach this height, or no curve is known
   */
  public OptionalDouble minimumAirspeed(double height) {
    List<Point> outline = outline();
    OptionalDouble greatest = OptionalDouble.empty();
    for (int i = 1; i < outline.size(); i++) {
      Point upper = outline.get(i - 1);
      Point lower = outline.get(i);
      double low = Math.min(upper.height, lower.height);
      double high = Math.max(upper.height, lower.height);
      if (height >= low && height <= high) {
        double at =
            high == low
                ? Math.max(upper.airspeed, lower.airspeed)
                : lower.airspeed
                    + (upper.airspeed - lower.airspeed)
                        * ((height - lower.height) / (upper.height - lower.height));
        greatest = OptionalDouble.of(Math.max(at, greatest.orElse(0)));
      }
    }
    return greatest;
  }

  /** The curve with both ends carried to where the area is bounded. */
  private List<Point> outline() {
    if (points.isEmpty()) {
      return points;
    }
    List<Point> outline = new ArrayList<>();
    outline.add(new Point(0, points.get(0).height));
    outline.addAll(points);
    Point end = points.get(points.size() - 1);
    if (end.airspeed > 0) {
      outline.add(new Point(end.airspeed, 0));
    }
    return outline;
  }
}
