package io.github.ringstate.sheets.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Points of a plot as they come up. */
public final class Points {

  private static final int STEPS = 240;

  private final List<Double> x = new ArrayList<>();
  private final List<Double> y = new ArrayList<>();

  /** No points yet. */
  public Points() {}

  /**
   * Points all at once.
   *
   * @param atX where they lie along the lower axis; finite
   * @param atY where they lie along the left axis, as many; finite
   * @return the points
   */
  public static Points of(double[] atX, double[] atY) {
    Points points = new Points();
    for (int i = 0; i < atX.length; i++) {
      points.add(atX[i], atY[i]);
    }
    return points;
  }

  /**
   * Points of a function, close enough for a smooth line.
   *
   * @param from where it begins
   * @param to where it ends
   * @param function the function; finite from end to end
   * @return the points
   */
  public static Points along(double from, double to, DoubleUnaryOperator function) {
    Points points = new Points();
    for (int i = 0; i <= STEPS; i++) {
      double t = (double) i / STEPS;
      double at = (1 - t) * from + t * to;
      points.add(at, function.applyAsDouble(at));
    }
    return points;
  }

  /**
   * One more point.
   *
   * @param atX along the lower axis; finite
   * @param atY along the left axis; finite
   */
  public void add(double atX, double atY) {
    x.add(atX);
    y.add(atY);
  }

  /**
   * How many there are.
   *
   * @return their number
   */
  public int size() {
    return x.size();
  }

  /**
   * Where they lie along the lower axis.
   *
   * @return a copy
   */
  public double[] x() {
    return array(x);
  }

  /**
   * Where they lie along the left axis.
   *
   * @return a copy
   */
  public double[] y() {
    return array(y);
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
