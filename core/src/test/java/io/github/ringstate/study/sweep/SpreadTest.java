package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.IndependentStream;
import java.util.Arrays;
import java.util.BitSet;
import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 16, 17, 63, 1000, 4097})
  void aPermutationMeetsEveryNumberOnce(int size) {
    for (int seed = 0; seed < 5; seed++) {
      Permutation permutation = new Permutation(size, new IndependentStream(seed, 0));
      BitSet met = new BitSet();
      for (int i = 0; i < size; i++) {
        met.set(permutation.at(i));
      }
      assertEquals(size, met.cardinality());
      assertEquals(size, met.length());
    }
  }

  @Test
  void everyOrderOfFourComesUpAboutAsOften() {
    // 24 orders in 24,000 draws: binomial with mean 1000 and deviation 31; six deviations
    int[] counts = new int[256];
    for (int seed = 0; seed < 24_000; seed++) {
      Permutation permutation = new Permutation(4, new IndependentStream(seed, 7));
      int code = 0;
      for (int i = 0; i < 4; i++) {
        code = code * 4 + permutation.at(i);
      }
      counts[code]++;
    }
    int[] met = Arrays.stream(counts).filter(count -> count > 0).toArray();
    assertEquals(24, met.length);
    for (int count : met) {
      assertEquals(1000, count, 190);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 9, 100, 1023, 5000})
  void aLatinHypercubeHasOnePointInEveryStratumOfEveryCoordinate(int points) {
    // the property that defines it: McKay, Beckman and Conover 1979
    int dimensions = 5;
    LatinHypercube spread = new LatinHypercube(dimensions, points, 42);
    BitSet[] met = new BitSet[dimensions];
    Arrays.setAll(met, i -> new BitSet());
    double[] at = new double[dimensions];
    for (int point = 0; point < points; point++) {
      spread.at(point, at);
      for (int i = 0; i < dimensions; i++) {
        assertTrue(at[i] > 0 && at[i] < 1);
        met[i].set((int) Math.floor(at[i] * points));
      }
    }
    for (BitSet strata : met) {
      assertEquals(points, strata.cardinality());
    }
  }

  @Test
  void coordinatesOfALatinHypercubeAreUncorrelated() {
    // the correlation of n independent pairs has deviation 1 / sqrt(n); five deviations
    int points = 10_000;
    LatinHypercube spread = new LatinHypercube(2, points, 3);
    double[] at = new double[2];
    double sum = 0;
    for (int point = 0; point < points; point++) {
      spread.at(point, at);
      sum += (at[0] - 0.5) * (at[1] - 0.5);
    }
    assertEquals(0, 12 * sum / points, 0.05);
  }

  @Test
  void theSobolPointsStartAsTheSequenceDoes() {
    // first coordinate: the radical inverse of the Gray code (Antonov and Saleev 1979); second: by
    // hand from the direction numbers of Joe and Kuo for s = 1, a = 0, m = 1
    double[][] first = {
      {0, 0}, {0.5, 0.5}, {0.75, 0.25}, {0.25, 0.75},
      {0.375, 0.375}, {0.875, 0.875}, {0.625, 0.125}, {0.125, 0.625}
    };
    SobolPoints spread = new SobolPoints(2);
    double[] at = new double[2];
    for (int point = 0; point < first.length; point++) {
      spread.at(point, at);
      assertArrayEquals(first[point], at);
    }
  }

  @Test
  void theFirstSobolCoordinateIsTheRadicalInverseOfTheGrayCode() {
    SobolPoints spread = new SobolPoints(1);
    double[] at = new double[1];
    for (int point = 0; point < 5000; point++) {
      spread.at(point, at);
      int gray = point ^ (point >>> 1);
      assertEquals(Integer.toUnsignedLong(Integer.reverse(gray)) * 0x1p-32, at[0]);
    }
  }

  @Test
  void anySobolPointIsFoundWithoutTheOthers() {
    SobolSequenceGenerator sequence = new SobolSequenceGenerator(7);
    double[][] all = new double[3000][];
    Arrays.setAll(all, i -> sequence.nextVector());
    SobolPoints spread = new SobolPoints(7);
    SplittableRandom random = new SplittableRandom(5);
    double[] at = new double[7];
    for (int i = 0; i < 2000; i++) {
      int point = random.nextInt(all.length);
      spread.at(point, at);
      assertArrayEquals(all[point], at);
    }
  }

  @Test
  void anotherSeedGivesAnotherLatinHypercube() {
    double[] one = new double[3];
    double[] other = new double[3];
    new LatinHypercube(3, 100, 1).at(0, one);
    new LatinHypercube(3, 100, 2).at(0, other);
    assertFalse(Arrays.equals(one, other));
  }
}
