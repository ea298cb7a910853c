package io.github.ringstate.validation.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KnownNumberTest {

  /** 1.645 standard deviations leave 5 per cent out at either end of a normal distribution. */
  private static final double BAND = 2 * 1.6449;

  private static double[] normal(int size, long seed) {
    Random random = new Random(seed);
    return random.doubles(size).map(unused -> random.nextGaussian()).toArray();
  }

  /**
   * Y = a X + b E with X and E normal and independent: the band of Y is 2 times 1.645 sqrt(a^2 +
   * b^2) wide, that of Y given X, whatever X, 2 times 1.645 b (linear Gaussian model, any textbook
   * of statistics). X is all but known within a bin, but not in the outermost ones; that and chance
   * in 20,000 samples make 0.02.
   */
  @ParameterizedTest
  @CsvSource({"1,1", "1,2", "0.5,2", "2,1", "0,1"})
  void theNarrowingIsThatOfTheLinearGaussianModel(double a, double b) {
    int size = 20_000;
    double[] x = normal(size, 1);
    double[] error = normal(size, 2);
    double[] y = new double[size];
    Arrays.setAll(y, i -> a * x[i] + b * error[i]);

    KnownNumber known = KnownNumber.of(y);

    assertEquals(1 - b / Math.hypot(a, b), known.narrowing(x), 0.02);
    assertEquals(1, known.unknown() / (BAND * Math.hypot(a, b)), 0.02);
  }

  @Test
  void aNumberThatTellsNothingIsWorthNothingWithinChance() {
    double[] y = normal(600, 3);
    KnownNumber known = KnownNumber.of(y);
    double square = 0;
    for (int i = 0; i < 40; i++) {
      double worth = known.narrowing(normal(600, 100 + i));
      square += worth * worth / 40;
    }
    // forty of them: their root mean square is known to 11 per cent
    assertEquals(1, Math.sqrt(square) / known.chanceOfNarrowing(), 0.4);
    assertTrue(known.chanceOfNarrowing() < 0.05, "chance " + known.chanceOfNarrowing());
  }

  @Test
  void theOutcomeItselfWouldBeWorthAlmostAll() {
    double[] y = normal(2000, 4);
    assertTrue(KnownNumber.of(y).narrowing(y) > 0.9);
  }

  @Test
  void onlyFiniteOutcomesAreTaken() {
    assertThrows(IllegalArgumentException.class, () -> KnownNumber.of(1, Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> KnownNumber.of(1, Double.NaN));
  }
}
