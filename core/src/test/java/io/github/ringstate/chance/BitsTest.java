package io.github.ringstate.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BitsTest {

  /** Second method: the JDK's own SplitMix64 (Steele, Lea and Flood, OOPSLA 2014). */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, -1, 42, 0x5EED5EED5EEDL, Long.MIN_VALUE, Long.MAX_VALUE})
  void bitsAreTheOutputsOfSplitMix64InOrder(long key) {
    SplittableRandom random = new SplittableRandom(key);
    for (int place = 0; place < 100; place++) {
      assertEquals(random.nextLong(), Bits.at(key, place));
    }
  }

  /** A seed begins the sequence of its own first output without the first step of the counter. */
  @ParameterizedTest
  @ValueSource(longs = {0, 7, -3})
  void aSeedIsMixedBeforeItBegins(long seed) {
    long golden = 0x9E3779B97F4A7C15L;
    long key = new SplittableRandom(seed - golden).nextLong();
    assertEquals(new SplittableRandom(key).nextLong(), Bits.of(seed, 0));
  }
}
