package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.study.sweep.Law.Family;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Distributions against the closed forms of their moments and quantiles. */
class LawTest {

  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static RealDistribution made(Family family, Double... numbers) {
    return new Law.Drawn(family, List.of(numbers), -INFINITE, INFINITE).distribution("x");
  }

  /** Any handbook of distributions. */
  @Test
  void theNumbersOfADistributionAreWhatTheyAreCalled() {
    RealDistribution normal = made(Family.NORMAL, 3.0, 0.5);
    assertEquals(3, normal.getNumericalMean(), 1e-12);
    assertEquals(0.25, normal.getNumericalVariance(), 1e-12);
    RealDistribution gamma = made(Family.GAMMA, 3.0, 0.5);
    assertEquals(3, gamma.getNumericalMean(), 1e-12);
    assertEquals(0.25, gamma.getNumericalVariance(), 1e-12);
    RealDistribution log = made(Family.LOG_NORMAL, 2.0, 5.0);
    assertEquals(2, log.inverseCumulativeProbability(0.5), 1e-9);
    assertEquals(5, log.inverseCumulativeProbability(0.9), 1e-9);
    // the logarithm is normal: 10 per cent lie as far below, 2 x 2 / 5
    assertEquals(0.8, log.inverseCumulativeProbability(0.1), 1e-9);
    RealDistribution uniform = made(Family.UNIFORM, 1.0, 4.0);
    assertEquals(1.75, uniform.inverseCumulativeProbability(0.25), 1e-12);
    RealDistribution triangular = made(Family.TRIANGULAR, 1.0, 2.0, 5.0);
    // a quarter of the triangle lies below its mode: (2 - 1) / (5 - 1)
    assertEquals(0.25, triangular.cumulativeProbability(2), 1e-12);
    assertEquals((1 + 2 + 5) / 3.0, triangular.getNumericalMean(), 1e-12);
  }

  static Stream<Arguments> impossible() {
    return Stream.of(
        Arguments.of(Family.NORMAL, List.of(1.0, 0.0)),
        Arguments.of(Family.NORMAL, List.of(1.0, -1.0)),
        Arguments.of(Family.NORMAL, List.of(Double.NaN, 1.0)),
        Arguments.of(Family.NORMAL, List.of(INFINITE, 1.0)),
        Arguments.of(Family.LOG_NORMAL, List.of(2.0, 1.0)),
        Arguments.of(Family.LOG_NORMAL, List.of(-2.0, 1.0)),
        Arguments.of(Family.LOG_NORMAL, List.of(-2.0, -1.0)),
        Arguments.of(Family.LOG_NORMAL, List.of(0.0, 1.0)),
        Arguments.of(Family.GAMMA, List.of(0.0, 1.0)),
        Arguments.of(Family.GAMMA, List.of(1.0, 0.0)),
        Arguments.of(Family.GAMMA, List.of(-1.0, 1.0)),
        Arguments.of(Family.GAMMA, List.of(1.0, -1.0)),
        Arguments.of(Family.UNIFORM, List.of(2.0, 2.0)),
        Arguments.of(Family.TRIANGULAR, List.of(1.0, 6.0, 5.0)));
  }

  @ParameterizedTest
  @MethodSource("impossible")
  void whatIsNoDistributionIsRefusedByName(Family family, List<Double> numbers) {
    Law.Drawn law = new Law.Drawn(family, numbers, -INFINITE, INFINITE);
    SettingException refused =
        assertThrows(SettingException.class, () -> law.distribution("craft.mass_kg"));
    assertEquals("craft.mass_kg", refused.key());
    assertTrue(refused.problem().contains(family.label()), refused.problem());
  }

  @ParameterizedTest
  @EnumSource
  void aDistributionHasANameForEachNumber(Family family) {
    assertEquals(family == Family.TRIANGULAR ? 3 : 2, family.numbers().size());
  }

  private static Sweep sweep(String key, int points, Law law) {
    return new Sweep(
        new SweepSpec(
            4,
            0,
            List.of(),
            List.of(),
            new Sample(
                Sample.Method.LATIN_HYPERCUBE, points, List.of(new Sample.Dimension(key, law)))));
  }

  private static double[] sorted(Law law) {
    Sweep sweep = sweep("craft.mass_kg", 400, law);
    double[] masses = new double[400];
    for (int i = 0; i < masses.length; i++) {
      masses[i] = sweep.point(i).numbers().get("craft.mass_kg");
    }
    Arrays.sort(masses);
    return masses;
  }

  /** One value in each stratum: the i-th smallest lies between the quantiles of both its ends. */
  @Test
  void aSampleFollowsItsDistribution() {
    double[] masses =
        sorted(new Law.Drawn(Family.NORMAL, List.of(500.0, 20.0), -INFINITE, INFINITE));
    RealDistribution normal = made(Family.NORMAL, 500.0, 20.0);
    for (int i = 0; i < masses.length; i++) {
      double chance = normal.cumulativeProbability(masses[i]);
      assertEquals((i + 0.5) / 400, chance, 0.5 / 400 + 1e-9);
    }
  }

  /** A uniform distribution that is cut stays uniform between its bounds. */
  @Test
  void boundsCutADistributionAndKeepItsForm() {
    double[] masses = sorted(new Law.Drawn(Family.UNIFORM, List.of(400.0, 600.0), 450, 500));
    for (int i = 0; i < masses.length; i++) {
      assertEquals(450 + 50 * (i + 0.5) / 400, masses[i], 0.5 * 50 / 400 + 1e-9);
    }
    double[] above = sorted(new Law.Drawn(Family.NORMAL, List.of(500.0, 20.0), 500, INFINITE));
    assertTrue(above[0] >= 500);
    // the upper half of a normal distribution has its median at 0.6745 deviations
    assertEquals(500 + 0.6745 * 20, above[200], 0.3);
    double[] below = sorted(new Law.Drawn(Family.NORMAL, List.of(500.0, 20.0), -INFINITE, 500));
    assertEquals(500 - 0.6745 * 20, below[200], 0.3);
  }

  private static void refused(
      String key, Family family, double low, double high, Double... numbers) {
    Law law = new Law.Drawn(family, List.of(numbers), low, high);
    assertEquals(key, assertThrows(SettingException.class, () -> sweep(key, 9, law)).key());
  }

  @Test
  void aDistributionThatTheSettingCannotTakeIsRefused() {
    // half of it below the least mass that may be
    refused("craft.mass_kg", Family.NORMAL, -INFINITE, INFINITE, 200.0, 20.0);
    // bounds that hold nothing of it, and such as may not be set
    refused("craft.mass_kg", Family.NORMAL, 900, 1000, 500.0, 20.0);
    refused("craft.mass_kg", Family.NORMAL, 1, INFINITE, 500.0, 20.0);
    refused("craft.mass_kg", Family.NORMAL, -INFINITE, 1e9, 500.0, 20.0);
    // words have no distribution
    refused("craft.name", Family.NORMAL, -INFINITE, INFINITE, 1.0, 1.0);
  }

  /** The range of a number of one technique is that of the technique that is flown. */
  @Test
  void aNumberOfOneTechniqueIsDrawnWithinItsRange() {
    Law law = new Law.Drawn(Family.NORMAL, List.of(15.0, 0.5), -INFINITE, INFINITE);
    Sweep sweep =
        new Sweep(
            new SweepSpec(
                4,
                0,
                List.of(Sweeps.word("pilot.technique", "lateral")),
                List.of(),
                new Sample(
                    Sample.Method.SOBOL,
                    64,
                    List.of(new Sample.Dimension("pilot.bank_deg", law)))));
    double sum = 0;
    for (int i = 0; i < 64; i++) {
      sum += sweep.point(i).numbers().get("pilot.bank_deg") / 64;
    }
    assertEquals(15, sum, 5 * 0.5 / FastMath.sqrt(64));
  }

  /** Of a normal distribution one half lies below its mean, 0.1 % beyond 3.09 deviations. */
  @Test
  void theRefusalSaysWhatShareLiesOutside() {
    Law half = new Law.Drawn(Family.NORMAL, List.of(200.0, 20.0), -INFINITE, INFINITE);
    SettingException refused =
        assertThrows(SettingException.class, () -> sweep("craft.mass_kg", 9, half));
    assertTrue(refused.problem().contains(" 50.0 % "), refused.problem());
    assertTrue(refused.allowed().contains("the setting's range"), refused.allowed());
    Law beyond = new Law.Drawn(Family.NORMAL, List.of(500.0, 20.0), 561.8, 1000);
    refused = assertThrows(SettingException.class, () -> sweep("craft.mass_kg", 9, beyond));
    assertTrue(refused.problem().contains(" 99.9 % "), refused.problem());
    assertTrue(refused.allowed().startsWith("bounds"), refused.allowed());
  }

  @Test
  void neitherEndOfASpanMayBeOutsideTheRangeOfTheSetting() {
    for (Law law :
        List.of(new Law.Span(500, 1e6, Scale.LINEAR), new Law.Span(1, 500, Scale.LINEAR))) {
      SettingException refused =
          assertThrows(SettingException.class, () -> sweep("craft.mass_kg", 9, law));
      assertEquals("craft.mass_kg", refused.key());
    }
  }
}
