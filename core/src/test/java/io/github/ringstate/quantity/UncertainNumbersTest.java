package io.github.ringstate.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class UncertainNumbersTest {

  private static final Parameter SHARE = Parameter.of("share", Unit.ONE, 0, 1, 0.5, "test");
  private static final Parameter MASS = Parameter.of("mass", Unit.KILOGRAM, 200, 2000, 600, "test");

  private static final UncertainNumbers NUMBERS =
      new UncertainNumbers(
          List.of(SHARE, MASS), new double[] {0.3, -1}, new double[][] {{4, 1.2}, {1.2, 1}});

  @Test
  void drawsHaveTheMeanAndTheCovarianceAndStayWithinTheirRanges() {
    SplittableRandom random = new SplittableRandom(1);
    int draws = 20_000;
    double[] sum = new double[2];
    double product = 0;
    for (int n = 0; n < draws; n++) {
      double[] values = NUMBERS.draw(random.nextGaussian(), random.nextGaussian());
      assertTrue(values[0] >= 0 && values[0] <= 1 && values[1] >= 200 && values[1] <= 2000);
      double one = UncertainNumbers.logit(SHARE, values[0]);
      double other = UncertainNumbers.logit(MASS, values[1]);
      sum[0] += one / draws;
      sum[1] += other / draws;
      product += (one - 0.3) * (other + 1) / draws;
    }
    // five standard errors of a mean and of a covariance of so many draws
    assertEquals(0.3, sum[0], 5 * 2 / Math.sqrt(draws));
    assertEquals(-1, sum[1], 5 / Math.sqrt(draws));
    assertEquals(1.2, product, 5 * Math.sqrt((4 + 1.2 * 1.2) / draws));
  }

  @Test
  void aValueIsThatOfItsLogit() {
    for (double mass : new double[] {200.1, 400, 1999}) {
      assertEquals(mass, UncertainNumbers.value(MASS, UncertainNumbers.logit(MASS, mass)), 1e-9);
    }
    assertEquals(0, UncertainNumbers.logit(SHARE, 0.5));
    // exp(0.3) / (1 + exp(0.3))
    assertEquals(0.574442516811659, NUMBERS.median(0), 1e-12);
  }

  @Test
  void whatIsNoCovarianceIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new UncertainNumbers(
                List.of(SHARE, MASS), new double[2], new double[][] {{1, 2}, {2, 1}}));
    assertThrows(
        IllegalArgumentException.class,
        () -> new UncertainNumbers(List.of(SHARE), new double[2], new double[][] {{1}}));
    double[][] one = {{1}};
    for (double[][] other : new double[][][] {{}, {{1, 0}}, {{1}, {1}}, {{-1}}, {{Double.NaN}}}) {
      assertThrows(
          IllegalArgumentException.class,
          () -> new UncertainNumbers(List.of(SHARE), new double[1], other));
    }
    assertThrows(
        IllegalArgumentException.class,
        () -> new UncertainNumbers(List.of(SHARE, MASS), new double[1], one));
    assertThrows(
        IllegalArgumentException.class,
        () -> new UncertainNumbers(List.of(SHARE), new double[] {Double.NaN}, one));
  }

  /** Cholesky's root of the covariance by hand: 2; 0.6 and 0.8. */
  @Test
  void aDrawIsTheMeanAndTheRootTimesTheNormals() {
    double[] drawn = NUMBERS.draw(0.5, -0.25);
    assertEquals(UncertainNumbers.value(SHARE, 0.3 + 2 * 0.5), drawn[0], 1e-12);
    assertEquals(UncertainNumbers.value(MASS, -1 + 0.6 * 0.5 - 0.8 * 0.25), drawn[1], 1e-9);
    assertEquals(List.of(SHARE, MASS), NUMBERS.parameters());
    assertTrue(
        NUMBERS.toString().matches("share about [0-9.]+, mass_kg about [0-9.]+"),
        NUMBERS.toString());
  }

  /** Of a correlation of 1.2 / (2 x 1) both ways; what is handed out is a copy. */
  @Test
  void numbersAreHandedOutAsTheyWereGiven() {
    assertEquals(0.6, NUMBERS.correlation(0, 1), 1e-15);
    assertEquals(0.6, NUMBERS.correlation(1, 0), 1e-15);
    assertEquals(2, NUMBERS.deviation(0));
    NUMBERS.covariance()[0][0] = 9;
    NUMBERS.mean()[0] = 9;
    assertEquals(2, NUMBERS.deviation(0));
    assertEquals(0.3, NUMBERS.mean()[0]);
    // exp(0.3 - 1.96 x 2) over one more
    double place = Math.exp(0.3 - 3.92);
    assertEquals(place / (1 + place), NUMBERS.quantile(0, -1.96), 1e-12);
  }
}
