package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.chance.RandomStream;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.ExponentialDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantileTest {

  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static double[] upTo(int n) {
    return IntStream.rangeClosed(1, n).asDoubleStream().toArray();
  }

  /**
   * Source: the definition, and the binomial distribution of the number of values below the true
   * quantile. Of many samples of an exponential distribution the interval covers the true quantile
   * as often as its ranks say, within four standard errors; that is no less than it claims; and
   * either end moved in by one rank would leave more outside than the confidence allows.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 0.5, 0.95",
    "100, 0.9, 0.95",
    "250, 0.95, 0.95",
    "1000, 0.95, 0.95",
    "1000, 0.95, 0.8",
    "30, 0.5, 0.9",
    "2000, 0.99, 0.99"
  })
  void theIntervalCoversTheTrueQuantileAsOftenAsItClaims(int n, double share, double confidence) {
    int trials = 1000;
    double truth = new ExponentialDistribution(1).inverseCumulativeProbability(share);
    int covered = 0;
    for (int trial = 0; trial < trials; trial++) {
      RandomStream draws = new IndependentStream(trial, n);
      double[] sample = new double[n];
      for (int i = 0; i < n; i++) {
        sample[i] = -Math.log(draws.uniform());
      }
      Arrays.sort(sample);
      Quantile quantile = Quantile.of(sample, share, confidence);
      assertTrue(quantile.low() <= quantile.value() && quantile.value() <= quantile.high());
      if (quantile.low() <= truth && truth <= quantile.high()) {
        covered++;
      }
    }
    BinomialDistribution below = new BinomialDistribution(n, share);
    double tail = (1 - confidence) / 2;
    int low = (int) Quantile.of(upTo(n), share, confidence).low();
    int high = (int) Quantile.of(upTo(n), share, confidence).high();
    double exact = below.cumulativeProbability(high - 1) - below.cumulativeProbability(low - 1);
    assertTrue(exact >= confidence);
    assertTrue(below.cumulativeProbability(low) > tail);
    assertTrue(1 - below.cumulativeProbability(high - 2) > tail);
    assertEquals(exact, (double) covered / trials, 4 * Math.sqrt(exact * (1 - exact) / trials));
  }

  /** The half width of a large sample's interval is z sqrt(p (1 - p) / n) / density at best. */
  @Test
  void theIntervalIsNoWiderThanLargeSamplesNeed() {
    int n = 100_000;
    double[] even = IntStream.range(0, n).mapToDouble(i -> (i + 0.5) / n).toArray();
    Quantile quantile = Quantile.of(even, 0.95, 0.95);
    double half = 1.959963984540054 * Math.sqrt(0.95 * 0.05 / n);
    assertEquals(0.95, quantile.value(), 1e-4);
    assertEquals(half, quantile.halfWidth(), 0.01 * half);
  }

  /**
   * Source: printed tables of distribution-free limits of the median, for instance ranks 2 and 9 of
   * 10, 6 and 15 of 20, 40 and 61 of 100, all at 95 per cent (from memory; they follow from the
   * binomial distribution with p = 1/2).
   */
  @ParameterizedTest
  @CsvSource({"10, 2, 9", "20, 6, 15", "100, 40, 61", "6, 1, 6"})
  void theLimitsOfTheMedianAreThoseOfTheTables(int n, int low, int high) {
    Quantile median = Quantile.of(upTo(n), 0.5, 0.95);
    assertEquals(low, median.low());
    assertEquals(high, median.high());
  }

  @Test
  void aSampleTooSmallForAnIntervalHasNone() {
    Quantile one = Quantile.of(new double[] {7}, 0.5, 0.95);
    assertEquals(7, one.value());
    assertEquals(-INFINITE, one.low());
    assertEquals(INFINITE, one.high());
    assertEquals(INFINITE, one.halfWidth());
    Quantile five = Quantile.of(upTo(5), 0.5, 0.95);
    assertEquals(-INFINITE, five.low());
    // 0.95^58 = 0.051 but 0.975 confidence of one side takes 0.95^72 = 0.0249: 72 are too few below
    assertEquals(INFINITE, Quantile.of(upTo(71), 0.95, 0.95).high());
    assertEquals(72, Quantile.of(upTo(72), 0.95, 0.95).high());
  }

  @Test
  void infiniteLossesCountAsTheGreatest() {
    double[] losses = upTo(100);
    Arrays.fill(losses, 90, 100, INFINITE);
    assertEquals(90, Quantile.of(losses, 0.9, 0.95).value());
    assertEquals(INFINITE, Quantile.of(losses, 0.91, 0.95).value());
    assertEquals(INFINITE, Quantile.of(losses, 0.9, 0.95).high());
    Quantile hopeless = Quantile.of(new double[] {INFINITE, INFINITE}, 0.5, 0.5);
    assertEquals(INFINITE, hopeless.value());
    assertEquals(INFINITE, hopeless.halfWidth());
    assertEquals(INFINITE, hopeless.plus(15).value());
  }

  /** 100 times 0.07 is 7.000000000000001 in binary floating point; so is 0.55 and others. */
  @Test
  void theRankIsTheLeastNumberThatIsTheShareAndNotOneMoreByRounding() {
    for (int n : new int[] {100, 200, 1000, 10_000}) {
      for (int percent = 1; percent < 100; percent++) {
        assertEquals(
            n / 100 * percent, Quantile.of(upTo(n), percent / 100.0, 0.95).value(), n + " values");
      }
    }
    assertEquals(4, Quantile.of(upTo(7), 0.5, 0.95).value());
    assertEquals(1, Quantile.of(upTo(7), 0.01, 0.95).value());
  }

  @Test
  void quantilesOverlapWhereTheyHaveAValueInCommon() {
    Quantile low = new Quantile(0.5, 2, 1, 3);
    assertTrue(low.overlaps(new Quantile(0.5, 4, 3, 5)));
    assertFalse(low.overlaps(new Quantile(0.5, 4, 3.1, 5)));
    assertTrue(new Quantile(0.5, 4, 0, 5).overlaps(low));
    assertEquals(new Quantile(0.5, 12, 11, 13), low.plus(10));
  }

  /** Half the interval, or the way to the only end that there is. */
  @Test
  void howFinelyAQuantileIsKnownIsSaidByTheEndsThatItHas() {
    assertEquals(1.5, new Quantile(0.5, 4, 3, 6).within());
    assertEquals(1, new Quantile(0.5, 4, 3, INFINITE).within());
    assertEquals(2, new Quantile(0.5, 4, -INFINITE, 6).within());
    assertEquals(0, new Quantile(0.5, 4, -INFINITE, INFINITE).within());
    assertEquals(0, new Quantile(0.5, INFINITE, 3, INFINITE).within());
    assertEquals(INFINITE, new Quantile(0.5, 4, -INFINITE, 6).halfWidth());
    assertEquals(
        new Quantile(0.5, 4, 2, 7),
        new Quantile(0.5, 4, 3, 7).widenedBy(new Quantile(0.5, 9, 2, 5)));
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Quantile.of(new double[0], 0.5, 0.95));
    for (double wrong : new double[] {0, 1, -0.1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> Quantile.of(upTo(9), wrong, 0.95));
      assertThrows(IllegalArgumentException.class, () -> Quantile.of(upTo(9), 0.5, wrong));
    }
  }

  /**
   * Source: Clopper and Pearson, Biometrika 26, 1934: 0 of n has the upper limit 1 - (alpha / 2)^(1
   * / n); 10 of 20 at 95 per cent is 0.272 to 0.728 in printed tables (from memory).
   */
  @Test
  void sharesHaveTheLimitsOfClopperAndPearson() {
    Share none = Share.of(0, 1000, 0.95);
    assertEquals(0, none.low());
    assertEquals(1 - Math.pow(0.025, 1.0 / 1000), none.high(), 1e-8);
    Share half = Share.of(10, 20, 0.95);
    assertEquals(0.5, half.value());
    assertEquals(0.272, half.low(), 5e-4);
    assertEquals(0.728, half.high(), 5e-4);
    assertEquals(1, Share.of(7, 7, 0.95).high());
    assertTrue(half.overlaps(Share.of(12, 20, 0.95)));
    assertFalse(none.overlaps(half));
    assertThrows(IllegalArgumentException.class, () -> Share.of(0, 0, 0.95));
    assertThrows(IllegalArgumentException.class, () -> Share.of(2, 1, 0.95));
    assertThrows(IllegalArgumentException.class, () -> Share.of(-1, 2, 0.95));
    for (double no : new double[] {Double.NaN, 0, 1}) {
      assertThrows(IllegalArgumentException.class, () -> Share.of(1, 2, no));
    }
    assertFalse(half.overlaps(none));
  }

  @ParameterizedTest
  @CsvSource({"0.02, 200", "0.3, 50", "0.002, 1000"})
  void theIntervalOfAShareCoversTheTrueOneAsOftenAsItClaims(double truth, int n) {
    int trials = 1000;
    int covered = 0;
    for (int trial = 0; trial < trials; trial++) {
      RandomStream draws = new IndependentStream(trial, n);
      int count = 0;
      for (int i = 0; i < n; i++) {
        count += draws.uniform() < truth ? 1 : 0;
      }
      Share share = Share.of(count, n, 0.95);
      covered += share.low() <= truth && truth <= share.high() ? 1 : 0;
    }
    assertTrue(
        covered >= trials * 0.95 - 4 * Math.sqrt(trials * 0.95 * 0.05), "covered " + covered);
  }
}
