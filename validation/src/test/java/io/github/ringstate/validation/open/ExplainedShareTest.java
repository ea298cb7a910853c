package io.github.ringstate.validation.open;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ExplainedShareTest {

  private static final int SIZE = 20_000;

  private static double[] even(long seed) {
    return new Random(seed).doubles(SIZE).toArray();
  }

  /** Var(a X) over Var(a X + b E): a^2 / (a^2 + b^2) for X and E of one variance. */
  @Test
  void aSumOfTwoIsExplainedByEachInTheRatioOfTheirVariances() {
    double[] x = even(1);
    double[] error = even(2);
    double[] sum = new double[SIZE];
    Arrays.setAll(sum, i -> 2 * x[i] + error[i]);
    assertEquals(0.8, ExplainedShare.of(x, sum), 0.015);
    assertEquals(0.2, ExplainedShare.of(error, sum), 0.015);
    assertEquals(0, ExplainedShare.of(even(3), sum), 0.004);
  }

  /**
   * One of two outcomes, certain above a half and with a chance of p below it: the mean jumps from
   * p to 1, which is (1 - p)^2 / 4 of a variance of m (1 - m), m = (1 + p) / 2.
   */
  @Test
  void aYesOrNoIsExplainedByWhatDecidesIt() {
    double p = 0.3;
    double[] x = even(4);
    double[] coin = even(5);
    double[] yes = new double[SIZE];
    Arrays.setAll(yes, i -> x[i] > 0.5 || coin[i] < p ? 1 : 0);
    double m = (1 + p) / 2;
    assertEquals((1 - p) * (1 - p) / 4 / (m * (1 - m)), ExplainedShare.of(x, yes), 0.02);
  }
}
