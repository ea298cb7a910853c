package io.github.ringstate.validation.catalogue;

import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;

/** Points at which things are compared. */
final class Grid {

  private Grid() {}

  /** Evenly spaced numbers, both ends included. */
  static double[] spaced(double from, double to, int count) {
    return IntStream.range(0, count)
        .mapToDouble(
            i -> {
              double t = (double) i / (count - 1);
              return (1 - t) * from + t * to;
            })
        .toArray();
  }

  /** The largest value of a function on all pairs; NaN if it is NaN anywhere. */
  static double largest(double[] xs, double[] zs, DoubleBinaryOperator function) {
    double largest = 0;
    for (double x : xs) {
      for (double z : zs) {
        largest = Math.max(largest, function.applyAsDouble(x, z));
      }
    }
    return largest;
  }
}
