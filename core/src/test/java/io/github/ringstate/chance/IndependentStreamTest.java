package io.github.ringstate.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IndependentStreamTest {

  private static final int SAMPLES = 20_000;
  private static final double ALPHA = 1e-3;

  /** The k-th number of each of many neighbouring samples. */
  private static double[] numbers(long seed, int k) {
    double[] numbers = new double[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      RandomStream draws = new IndependentStream(seed, i);
      for (int j = 0; j < k; j++) {
        draws.uniform();
      }
      numbers[i] = draws.uniform();
    }
    return numbers;
  }

  /** Source: Pearson's chi-square test, its distribution from Hipparchus. */
  private static void assertEven(int[] counts) {
    double expected = (double) SAMPLES / counts.length;
    double sum = 0;
    for (int count : counts) {
      sum += (count - expected) * (count - expected) / expected;
    }
    double rare =
        new ChiSquaredDistribution(counts.length - 1).inverseCumulativeProbability(1 - ALPHA);
    assertTrue(sum < rare, "chi-square " + sum + ", 1 in 1000 exceeds " + rare);
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, -1, 42, Long.MIN_VALUE, 0x9E3779B97F4A7C15L})
  void theNumbersOfNeighbouringSamplesAreEvenlySpread(long seed) {
    for (int k : new int[] {0, 1, 7}) {
      int[] counts = new int[50];
      for (double u : numbers(seed, k)) {
        counts[(int) (u * 50)]++;
      }
      assertEven(counts);
    }
  }

  /**
   * Source: the Kolmogorov-Smirnov statistic exceeds 1.95 / sqrt(n) once in a thousand (limit
   * distribution 2 exp(-2 t^2)).
   */
  @Test
  void theNumbersPassTheKolmogorovSmirnovTest() {
    double[] sorted = numbers(5, 0);
    Arrays.sort(sorted);
    double greatest = 0;
    for (int i = 0; i < SAMPLES; i++) {
      greatest =
          Math.max(
              greatest,
              Math.max((i + 1.0) / SAMPLES - sorted[i], sorted[i] - (double) i / SAMPLES));
    }
    assertTrue(greatest < 1.95 / Math.sqrt(SAMPLES), "distance " + greatest);
  }

  /** Chi-square on a grid of pairs: neighbouring samples, and neighbouring numbers of a sample. */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 1_000_003})
  void neighbouringSamplesAndNumbersAreIndependent(long seed) {
    double[] first = numbers(seed, 0);
    double[] second = numbers(seed, 1);
    double[] otherSeed = numbers(seed + 1, 0);
    int[] samples = new int[100];
    int[] within = new int[100];
    int[] seeds = new int[100];
    for (int i = 0; i < SAMPLES; i++) {
      double next = first[(i + 1) % SAMPLES];
      samples[cell(first[i], next)]++;
      within[cell(first[i], second[i])]++;
      seeds[cell(first[i], otherSeed[i])]++;
    }
    assertEven(samples);
    assertEven(within);
    assertEven(seeds);
  }

  private static int cell(double first, double second) {
    int row = (int) (first * 10);
    int column = (int) (second * 10);
    return row * 10 + column;
  }

  @Test
  void aSampleHasTheSameNumbersWheneverItIsDrawn() {
    RandomStream once = new IndependentStream(7, 123_456_789_012L);
    RandomStream again = new IndependentStream(7, 123_456_789_012L);
    for (int i = 0; i < 100; i++) {
      assertEquals(once.uniform(), again.uniform());
      assertEquals(once.seed(), again.seed());
    }
    assertNotEquals(new IndependentStream(7, 1).seed(), new IndependentStream(8, 1).seed());
  }

  @Test
  void noTwoSamplesOfNeighbouringSeedsBeginAlike() {
    Set<Long> begun = new HashSet<>();
    for (long seed = -2; seed <= 2; seed++) {
      for (int i = 0; i < 2000; i++) {
        assertTrue(begun.add(new IndependentStream(seed, i).seed()));
      }
    }
  }

  @Test
  void everyNumberIsInsideTheOpenInterval() {
    for (double u : numbers(11, 0)) {
      assertTrue(u > 0 && u < 1);
    }
  }
}
