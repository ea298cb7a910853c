package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SpreadTest {

  private static final Parameter ANGLE =
      Parameter.of("angle", Unit.DEGREE, 5, 30, 12, "made up for the test");

  static Stream<Spread> builtIn() {
    return Technique.ALL.stream().flatMap(technique -> technique.spreads().stream());
  }

  @ParameterizedTest
  @MethodSource("builtIn")
  void theValuesOfEveryTechniqueStayInTheirRanges(Spread spread) {
    SplittableRandom random = new SplittableRandom(1);
    double low = spread.parameter().quantity().low();
    double high = spread.parameter().quantity().high();
    for (int i = 0; i < 500; i++) {
      double value = spread.value(random.nextDouble());
      assertTrue(value >= low && value <= high, spread.parameter().name() + " " + value);
    }
    for (double end : new double[] {0x1.0p-53, 1e-12, 0.5, 1 - 1e-12, 1 - 0x1.0p-53}) {
      double value = spread.value(end);
      assertTrue(value >= low && value <= high, spread.parameter().name() + " " + value);
    }
  }

  @ParameterizedTest
  @MethodSource("builtIn")
  void moreOfTheUniformIsMoreOfTheValue(Spread spread) {
    double last = Double.NEGATIVE_INFINITY;
    for (double u = 0.005; u < 1; u += 0.01) {
      double value = spread.value(u);
      assertTrue(value >= last);
      last = value;
    }
  }

  /**
   * Source: the mean of a normal distribution cut off at a and b is m + s (phi(a) - phi(b)) /
   * (Phi(b) - Phi(a)), with a and b in standard units.
   */
  @Test
  void aNormalSpreadIsTheNormalDistributionCutOffAtTheRange() {
    double s = 10;
    Spread spread = Spread.normal(ANGLE, s);
    NormalDistribution unit = new NormalDistribution();
    double a = (5.0 - 12) / s;
    double b = (30.0 - 12) / s;
    double mean =
        12
            + s
                * (unit.density(a) - unit.density(b))
                / (unit.cumulativeProbability(b) - unit.cumulativeProbability(a));
    int n = 20_000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += spread.value((i + 0.5) / n);
    }
    assertEquals(mean, sum / n, 1e-4);
  }

  @Test
  void anEvenSpreadHasItsValuesInProportion() {
    Spread spread = Spread.even(ANGLE, 10, 20);
    assertEquals(10, spread.value(1e-15), 1e-9);
    assertEquals(12.5, spread.value(0.25), 1e-9);
    assertEquals(17, Spread.even(ANGLE, 4, 30).value(12.0 / 25), 1e-9, "cut off at 5");
  }

  @Test
  void anyDistributionMaySpreadAParameter() {
    Spread spread = new Spread(ANGLE, new LogNormalDistribution(FastMath.log(12), 0.3));
    assertTrue(spread.value(0.5) > 11 && spread.value(0.5) < 13);
  }

  @Test
  void aDistributionOutsideTheRangeIsRefused() {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> Spread.even(ANGLE, 40, 50));
    assertTrue(refused.getMessage().contains(Spread.NOTHING_WITHIN));
    assertThrows(IllegalArgumentException.class, () -> Spread.normal(ANGLE, 0));
    assertThrows(IllegalArgumentException.class, () -> Spread.normal(ANGLE, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Spread.even(ANGLE, 20, 10));
    assertThrows(IllegalArgumentException.class, () -> Spread.even(ANGLE, Double.NaN, 10));
  }

  @Test
  void theOrderOfStepsVariesInEveryTechniqueOfTwoHands() {
    for (Technique technique :
        List.of(Technique.FORWARD, Technique.LATERAL, Technique.AUTOROTATION)) {
      Spread order =
          technique.spreads().stream()
              .filter(spread -> spread.parameter().name().equals("collective later"))
              .findFirst()
              .orElseThrow();
      assertTrue(order.value(0.01) < 0 && order.value(0.99) > 0, technique.name());
    }
  }
}
