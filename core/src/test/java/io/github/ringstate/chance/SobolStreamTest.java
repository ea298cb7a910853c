package io.github.ringstate.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SobolStreamTest {

  private static final int SETS = SobolStream.SETS;

  /** The first points of a set, by point and coordinate. */
  private static double[][] points(long seed, int set, int count, int dimensions) {
    double[][] points = new double[count][dimensions];
    for (int i = 0; i < count; i++) {
      RandomStream draws = new SobolStream(seed, (long) i * SETS + set);
      Arrays.setAll(points[i], dimension -> draws.uniform());
    }
    return points;
  }

  /** Source: Hipparchus's generator, whose direction numbers are those of Joe and Kuo. */
  @Test
  void theSequenceIsThatOfHipparchus() {
    SobolSequenceGenerator generator = new SobolSequenceGenerator(SobolSequence.DIMENSIONS);
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 3000; i++) {
      int index = i < 2000 ? i : random.nextInt(Integer.MAX_VALUE);
      double[] expected = i < 2000 ? generator.nextVector() : generator.skipTo(index);
      for (int dimension = 0; dimension < expected.length; dimension++) {
        assertEquals(
            expected[dimension],
            SobolSequence.digits(index, dimension) * 0x1p-31,
            "point " + index);
      }
    }
  }

  /**
   * Source: Owen (1995), proposition 1: a scrambled net is a net. Each coordinate of 2^m points has
   * one in every of 2^m equal parts, and the first two coordinates, which make a net of the best
   * kind, one in every box of that area with sides of powers of two.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, -7, 123_456_789_012L})
  void everySetStaysANet(long seed) {
    int m = 6;
    int count = 1 << m;
    for (int set = 0; set < SETS; set++) {
      double[][] points = points(seed, set, count, SobolSequence.DIMENSIONS);
      for (int dimension = 0; dimension < SobolSequence.DIMENSIONS; dimension++) {
        boolean[] met = new boolean[count];
        for (double[] point : points) {
          met[(int) (point[dimension] * count)] = true;
        }
        assertEquals(count, count(met), "coordinate " + dimension);
      }
      for (int across = 0; across <= m; across++) {
        boolean[] met = new boolean[count];
        int columns = 1 << across;
        int rows = count / columns;
        for (double[] point : points) {
          int column = (int) (point[0] * columns);
          met[column * rows + (int) (point[1] * rows)] = true;
        }
        assertEquals(count, count(met), columns + " by " + rows);
      }
    }
  }

  private static int count(boolean[] met) {
    int count = 0;
    for (boolean one : met) {
      count += one ? 1 : 0;
    }
    return count;
  }

  /** Source: the definition of nested scrambling, Owen (1995). */
  @Test
  void pointsThatShareTheirFirstDigitsShareThemScrambledAndPartAtTheSameDigit() {
    double[][] points = points(5, 2, 512, 3);
    for (int i = 0; i < points.length; i++) {
      for (int j = 0; j < i; j++) {
        for (int dimension = 0; dimension < 3; dimension++) {
          int plain = SobolSequence.digits(i, dimension) ^ SobolSequence.digits(j, dimension);
          long scrambled =
              (long) (points[i][dimension] * 0x1p31) ^ (long) (points[j][dimension] * 0x1p31);
          assertEquals(
              Integer.numberOfLeadingZeros(plain), Long.numberOfLeadingZeros(scrambled) - 32);
        }
      }
    }
  }

  /**
   * Source: the Kolmogorov-Smirnov statistic exceeds 1.95 / sqrt(n) once in a thousand (limit
   * distribution 2 exp(-2 t^2)). One and the same point, over many seeds.
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 7, 8, 1000, 123_457})
  void aPointIsUniform(int sample) {
    int seeds = 5000;
    for (int dimension : new int[] {0, 1, 9, 31, 70}) {
      double[] sorted = new double[seeds];
      for (int seed = 0; seed < seeds; seed++) {
        RandomStream draws = new SobolStream(seed, sample);
        for (int i = 0; i < dimension; i++) {
          draws.uniform();
        }
        sorted[seed] = draws.uniform();
      }
      Arrays.sort(sorted);
      double greatest = 0;
      for (int i = 0; i < seeds; i++) {
        greatest =
            Math.max(
                greatest, Math.max((i + 1.0) / seeds - sorted[i], sorted[i] - (double) i / seeds));
      }
      assertTrue(greatest < 1.95 / Math.sqrt(seeds), dimension + ": distance " + greatest);
      assertTrue(sorted[0] > 0 && sorted[seeds - 1] < 1);
    }
  }

  /**
   * Independent means have correlation 0; of 4,000 pairs a correlation above 3.3 / sqrt(4000) is
   * found once in a thousand (normal approximation).
   */
  @Test
  void setsOfOneSeedAndSetsOfNeighbouringSeedsAreIndependent() {
    int pairs = 4000;
    assertUncorrelated(pairs, 0, 1, 0);
    assertUncorrelated(pairs, 0, 7, 0);
    assertUncorrelated(pairs, 3, 3, 1);
  }

  private static void assertUncorrelated(int pairs, int oneSet, int otherSet, int seedsApart) {
    double both = 0;
    double one = 0;
    double other = 0;
    for (int seed = 0; seed < 2 * pairs; seed += 2) {
      double a = mean(points(seed, oneSet, 4, 1));
      double b = mean(points(seed + seedsApart, otherSet, 4, 1));
      both += a * b;
      one += a * a;
      other += b * b;
    }
    double correlation = both / Math.sqrt(one * other);
    assertTrue(Math.abs(correlation) < 3.3 / Math.sqrt(pairs), "correlation " + correlation);
  }

  private static double mean(double[][] points) {
    return Arrays.stream(points).mapToDouble(point -> point[0] - 0.5).average().orElseThrow();
  }

  /**
   * Source: Owen, Annals of Statistics 25, 1997: the variance of a smooth integrand falls nearly as
   * n^-3, that of independent points as 1/n. With 256 points of five coordinates it is far less
   * than a hundredth.
   */
  @Test
  void aSmoothMeanIsFoundFarMorePreciselyThanFromIndependentPoints() {
    int count = 256;
    int seeds = 100;
    double scrambled = 0;
    double independent = 0;
    for (int seed = 0; seed < seeds; seed++) {
      double even = 0;
      double chance = 0;
      for (int i = 0; i < count; i++) {
        even += smooth(new SobolStream(seed, (long) i * SETS));
        chance += smooth(new IndependentStream(seed, i));
      }
      scrambled += even / count * even / count / seeds;
      independent += chance / count * chance / count / seeds;
    }
    assertTrue(scrambled < 0.01 * independent, scrambled + " against " + independent);
  }

  /** Its mean is zero. */
  private static double smooth(RandomStream draws) {
    double product = 1;
    for (int i = 0; i < 5; i++) {
      product *= 1 + 0.5 * (draws.uniform() - 0.5);
    }
    return product - 1;
  }

  @Test
  void aSampleHasTheSameNumbersWheneverItIsDrawnAndAnotherSeedHasOthers() {
    RandomStream once = new SobolStream(7, 123_456_789L);
    RandomStream again = new SobolStream(7, 123_456_789L);
    RandomStream other = new SobolStream(8, 123_456_789L);
    for (int i = 0; i < 40; i++) {
      double number = once.uniform();
      assertEquals(number, again.uniform());
      assertNotEquals(number, other.uniform());
    }
    assertEquals(once.seed(), again.seed());
  }

  @Test
  void seedsAndNumbersBeyondTheSequenceAreIndependentOfTheSets() {
    RandomStream point = new SobolStream(7, 11);
    RandomStream independent = new IndependentStream(7, 11);
    for (int i = 0; i < SobolSequence.DIMENSIONS; i++) {
      point.uniform();
    }
    assertEquals(independent.uniform(), point.uniform());
    assertEquals(independent.seed(), point.seed());
  }

  @Test
  void onlySamplesOfTheSequenceAreDrawn() {
    assertThrows(IllegalArgumentException.class, () -> new SobolStream(1, -1));
    assertThrows(IllegalArgumentException.class, () -> new SobolStream(1, SobolStream.MOST));
    assertTrue(new SobolStream(1, SobolStream.MOST - 1).uniform() > 0);
  }

  @Test
  void samplesMakeFullSets() {
    int[] wished = {1, 8, 9, 250, 256, 257, 1000, 10_000_000};
    int[] full = {8, 8, 16, 256, 256, 512, 1024, 16_777_216};
    for (int i = 0; i < wished.length; i++) {
      assertEquals(full[i], Drawing.SOBOL.samples(wished[i]));
      assertEquals(wished[i], Drawing.INDEPENDENT.samples(wished[i]));
    }
    assertFalse(Drawing.named("even").isPresent());
    assertEquals(Drawing.SOBOL, Drawing.named("sobol").orElseThrow());
  }
}
