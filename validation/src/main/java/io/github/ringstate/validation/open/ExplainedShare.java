package io.github.ringstate.validation.open;

import java.util.Arrays;

/**
 * The part of the variance of an outcome that goes with a number: the correlation ratio. It takes a
 * yes or no, 1 or 0, as well.
 */
final class ExplainedShare {

  /** Bins of equal size in the order of the number. */
  private static final int BINS = 20;

  private ExplainedShare() {}

  /**
   * Works it out from the means of bins, less what chance alone gives them.
   *
   * @param number the number in each case
   * @param outcome the outcome, which varies
   * @return the part, at most 1; by chance it may lie a little below 0
   */
  static double of(double[] number, double[] outcome) {
    int[] order = KnownNumber.order(number);
    double mean = Arrays.stream(outcome).average().orElse(Double.NaN);
    double total = Arrays.stream(outcome).map(one -> (one - mean) * (one - mean)).sum();
    double between = 0;
    for (int bin = 0; bin < BINS; bin++) {
      int[] inside =
          Arrays.copyOfRange(order, order.length * bin / BINS, order.length * (bin + 1) / BINS);
      double here = Arrays.stream(inside).mapToDouble(i -> outcome[i]).average().orElse(mean);
      between += inside.length * (here - mean) * (here - mean);
    }
    double byChance = (BINS - 1.0) / (number.length - 1.0);
    return (between / total - byChance) / (1 - byChance);
  }
}
