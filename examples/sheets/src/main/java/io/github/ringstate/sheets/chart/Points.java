package io.github.ringstate.sheets.chart;

import java.util.Arrays;

/** Points of a plot as they come up. */
public final class Points {

  private double[] x = new double[16];
  private double[] y = new double[16];
  private int size;

  /** No points yet. */
  public Points() {}

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
