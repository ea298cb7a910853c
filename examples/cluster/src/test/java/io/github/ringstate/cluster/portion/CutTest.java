package io.github.ringstate.cluster.portion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.study.sweep.Sweep;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CutTest {

  static LongStream seeds() {
    return new SplittableRandom(1).longs(100);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyPointIsInOnePortionAndNoneInTwo(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    long points = 1 + random.nextLong(5_000);
    Cut cut = new Cut(points, 1 + random.nextInt(700));
    long next = 0;
    for (int number = 0; number < cut.portions(); number++) {
      Portion portion = cut.portion(number);
      assertEquals(number, portion.number());
      assertEquals(next, portion.from());
      assertTrue(portion.size() >= 1);
      next += portion.size();
    }
    assertEquals(points, next);
  }

  @ParameterizedTest
  @CsvSource({
    "1, 2, 1024, 1", // less than a block
    "20000, 2, 3072, 7", // 2500 rounded up to whole blocks
    "1000000, 2, 125952, 8",
    "1000000000, 64, 262144, 3815",
    "1000000000000, 64, 10000384, 99997", // as many as there may be
  })
  void aCutForAClusterHasFourPortionsForEachCoreWithinItsBounds(
      long points, int cores, int size, int portions) {
    Cut cut = Cut.forCores(points, cores);
    assertEquals(size, cut.size());
    assertEquals(portions, cut.portions());
  }

  @Test
  void theLargestSweepCanBeCutAndTheLastPortionEndsWithIt() {
    Cut cut = Cut.forCores(Sweep.MOST_POINTS, 1);
    assertTrue(cut.portions() <= Cut.MOST_PORTIONS);
    Portion last = cut.portion(cut.portions() - 1);
    assertEquals(Sweep.MOST_POINTS, last.from() + last.size());
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "10, 0", "10, -5", "1000000000, 9999"})
  void aCutIntoNothingOrIntoCrumbsIsRefused(long points, int size) {
    assertThrows(IllegalArgumentException.class, () -> new Cut(points, size));
  }
}
