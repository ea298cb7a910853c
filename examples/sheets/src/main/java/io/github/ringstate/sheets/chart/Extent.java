package io.github.ringstate.sheets.chart;

import java.util.stream.DoubleStream;

/** From where to where the data of a plot reach along one axis, or from where to where it shows. */
final class Extent {

  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;
  private boolean given;
  private boolean logarithmic;

  /** Makes the axis cover some values, unless its ends are given. */
  void add(double... values) {
    if (!given) {
      low = Math.min(low, DoubleStream.of(values).min().orElse(low));
      high = Math.max(high, DoubleStream.of(values).max().orElse(high));
    }
  }

  /** Gives the ends of the axis, whatever the data. */
  void give(double from, double to, boolean asLogarithms) {
    if (!(from < to) || (asLogarithms && !(from > 0))) {
      throw new IllegalArgumentException("an axis cannot reach from " + from + " to " + to);
    }
    low = from;
    high = to;
    given = true;
    logarithmic = asLogarithms;
  }

  /**
   * The axis.
   *
   * @param most how many ticks there may be, at least 2
   */
  Axis axis(int most) {
    if (logarithmic) {
      return Axis.decades(low, high);
    }
    if (given) {
      return Axis.exactly(low, high, most);
    }
    return low <= high ? Axis.covering(low, high, most) : Axis.covering(0, 1, most);
  }
}
