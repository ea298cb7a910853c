package io.github.ringstate.validation.open;

import io.github.ringstate.study.Quantile;
import java.util.Arrays;

/**
 * A sample in four numbers.
 *
 * @param mean its mean
 * @param low its 5 per cent point
 * @param middle its median
 * @param high its 95 per cent point
 */
public record Summary(double mean, double low, double middle, double high) {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  /**
   * Sums a sample up.
   *
   * @param sample the sample, in any order; infinite values count as the greatest
   * @return the summary
   */
  public static Summary of(double... sample) {
    double[] sorted = sample.clone();
    Arrays.sort(sorted);
    return new Summary(
        Arrays.stream(sorted).average().orElse(Double.NaN),
        Quantile.value(sorted, LOW),
        Quantile.value(sorted, 0.5),
        Quantile.value(sorted, HIGH));
  }

  /**
   * The width of the band that leaves 5 per cent out at either end.
   *
   * @return the width, in the sample's unit
   */
  public double width() {
    return high - low;
  }
}
