package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.chance.RandomStream;
import java.util.Arrays;
import java.util.BitSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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

  /** Source: the streams of pilots, which have tests of their own; a sample has others. */
  @ParameterizedTest
  @EnumSource(Drawing.class)
  void drawnPointsAreNumbersOfStreamsThatNoPilotHas(Drawing drawing) {
    DrawnPoints spread = new DrawnPoints(drawing, 5);
    double[] at = new double[7];
    for (int point : new int[] {0, 1, 8, 2999}) {
      spread.at(point, at);
      RandomStream draws = drawing.stream(5 ^ Spread.SAMPLE_DRAWS, point);
      for (double coordinate : at) {
        assertEquals(draws.uniform(), coordinate);
      }
      assertNotEquals(drawing.stream(5, point).uniform(), at[0]);
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
