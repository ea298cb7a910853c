package io.github.ringstate.sheets.chart;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Points of a plot as they come up. */
public final class Points {

  private static final int STEPS = 240;

  private double[] x = new double[16];
  private double[] y = new double[16];
  private int size;

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
    if (size == x.length) {
      x = Arrays.copyOf(x, 2 * size);
      y = Arrays.copyOf(y, 2 * size);
    }
    x[size] = atX;
    y[size] = atY;
    size++;
  }

  /**
   * How many there are.
   *
   * @return their number
   */
  public int size() {
    return size;
  }

  /**
   * Where they lie along the lower axis.
   *
   * @return a copy
   */
  public double[] x() {
    return Arrays.copyOf(x, size);
  }

  /**
   * Where they lie along the left axis.
   *
   * @return a copy
   */
  public double[] y() {
    return Arrays.copyOf(y, size);
  }
}
