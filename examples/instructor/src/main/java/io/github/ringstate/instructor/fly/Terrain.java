package io.github.ringstate.instructor.fly;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * How high the terrain stands along the way over the ground, straight between its points. The
 * flights do not feel it: it is drawn, and a flight that comes below it is named.
 *
 * @param points the points, the hindmost first; none for level ground
 */
record Terrain(List<Point> points) {

  static final String OPTION = "--terrain-ft";

  static final Terrain LEVEL = new Terrain(List.of());

  private static final Quantity DISTANCE = new Quantity("distance", Unit.FOOT, -20_000, 20_000);
  private static final Quantity HEIGHT = new Quantity("terrain height", Unit.FOOT, -3000, 3000);

  /**
   * One point.
   *
   * @param distance over the ground from the point of onset, m; negative before it
   * @param height above the ground below the point of onset, m
   */
  record Point(double distance, double height) {}

  Terrain {
    points = List.copyOf(points);
  }

  /**
   * Reads a profile.
   *
   * @param text points with commas between, for instance {@code 0:0,300:60}
   * @return the terrain
   * @throws UserError if a point is not written so, out of range, or not beyond the one before
   */
  static Terrain read(String text) {
    List<Point> points = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      String[] numbers = part.split(":", -1);
      if (numbers.length != 2) {
        throw UserError.option(
            OPTION, text, "distance:height with commas between, as in 0:0,300:60");
      }
      double distance = NumberText.si(OPTION, numbers[0], DISTANCE);
      if (!points.isEmpty() && !(distance > points.get(points.size() - 1).distance())) {
        throw UserError.option(OPTION, text, "every distance beyond the one before it");
      }
      points.add(new Point(distance, NumberText.si(OPTION, numbers[1], HEIGHT)));
    }
    if (points.size() < 2) {
      throw UserError.option(OPTION, text, "two points or more, as in 0:0,300:60");
    }
    return new Terrain(points);
  }
}
