package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.ParameterSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingStateShakingTest {

  private static final double ROTOR_SPEED = 50;
  private static final double REVOLUTION = 2 * Math.PI / ROTOR_SPEED;

  private static RingStateShaking shaking(double percent, long seed) {
    return new RingStateShaking(
        ParameterSet.standard(RingStateShaking.PARAMETERS).with(RingStateShaking.STRENGTH, percent),
        ROTOR_SPEED,
        seed);
  }

  /** Sinusoids of one frequency add up to one more. */
  @Test
  void withoutASpreadOfPeriodsTheFluctuationIsPeriodic() {
    RingStateShaking periodic =
        new RingStateShaking(
            ParameterSet.standard(RingStateShaking.PARAMETERS)
                .with(RingStateShaking.PERIOD_SPREAD, 1),
            ROTOR_SPEED,
            1);
    double period = 32 * REVOLUTION;
    double turned = 0;
    for (double t = 0; t < period; t += 0.01) {
      double factor = periodic.factor(t, 0, -1.2);
      assertEquals(factor, periodic.factor(t + period, 0, -1.2), 1e-12);
      turned = Math.max(turned, Math.abs(shaking(5, 1).factor(t + period, 0, -1.2) - factor));
    }
    assertTrue(turned > 0.01, "with a spread it is not: " + turned);
  }

  /** Source: greatest at 1.2 to 1.3 (Veismann, Dougherty and Gharib, Flow, 2023, small rotors). */
  @Test
  void theShakingIsStrongestNearADescentOfOnePointTwo() {
    RingStateShaking shaking = shaking(5, 1);
    double strongest = 0;
    double where = 0;
    for (double z = -3; z <= 1; z += 0.01) {
      double level = shaking.roughness(0, z);
      if (level > strongest) {
        strongest = level;
        where = z;
      }
    }
    assertEquals(-1.2, where, 0.011);
    assertEquals(0.05, strongest, 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "0, 0.5", "0, -2.5", "1, -1.2", "1.5, -1.2", "2, 0"})
  void outsideTheRingStateNextToNothingIsLeft(double edgewise, double axial) {
    RingStateShaking shaking = shaking(5, 1);
    assertTrue(shaking.roughness(edgewise, axial) < 0.02 * 0.05);
    for (double t = 0; t < 30; t += 0.1) {
      assertEquals(1, shaking.factor(t, edgewise, axial), 3 * 0.02 * 0.05);
    }
  }

  /**
   * Nine sinusoids of equal strength: over a long time their variances add up. What the bend takes
   * off, if they add up to something like a normal distribution of deviation s: E[x^2 / (1 + x^2)]
   * = 1 - (sqrt(pi / 2) / s) exp(1 / (2 s^2)) erfc(1 / (s sqrt 2)), whose root is 0.270 for 0.3 and
   * 0.145 for 0.15.
   */
  @ParameterizedTest
  @CsvSource({"1, 1, 0.01", "5, 1, 0.01", "15, 0.969, 0.01", "30, 0.90, 0.01"})
  void theDeviationOfTheFactorIsItsRoughnessLessWhatTheBendTakes(
      double percent, double kept, double part) {
    double mean = 0;
    double square = 0;
    int n = 0;
    for (long seed = 0; seed < 20; seed++) {
      RingStateShaking shaking = shaking(percent, seed);
      for (double t = 0; t < 600; t += 0.5) {
        double factor = shaking.factor(t, 0, -1.2);
        assertTrue(factor > 0);
        mean += factor;
        square += (factor - 1) * (factor - 1);
        n++;
      }
    }
    double expected = shaking(percent, 0).roughness(0, -1.2);
    assertEquals(percent / 100, expected, 1e-12);
    assertEquals(1, mean / n, 0.03 * expected);
    assertEquals(kept * expected, Math.sqrt(square / n), part * expected);
  }

  /**
   * Source: every 20 to 50 revolutions (Stack, Caradonna and Savas, small rotor). Of periods spread
   * evenly in the logarithm from 32 / s to 32 s the mean square frequency is that of the middle
   * times (s^2 - 1 / s^2) / (4 ln s), and its root is how often a normal process rises through its
   * mean (S. O. Rice, Mathematical Analysis of Random Noise, 1944; from memory).
   */
  @Test
  void thePeriodIsTensOfRevolutions() {
    double sum = 0;
    for (long seed = 0; seed < 20; seed++) {
      RingStateShaking shaking = shaking(5, seed);
      int rises = 0;
      double time = 4000 * REVOLUTION;
      double step = REVOLUTION / 2;
      for (double t = 0; t < time; t += step) {
        if (shaking.factor(t, 0, -1.2) < 1 && shaking.factor(t + step, 0, -1.2) >= 1) {
          rises++;
        }
      }
      double revolutions = 4000.0 / rises;
      assertTrue(revolutions > 20 && revolutions < 51, "every " + revolutions + " revolutions");
      sum += revolutions;
    }
    double square = (1.6 * 1.6 - 1 / (1.6 * 1.6)) / (4 * Math.log(1.6));
    assertEquals(32 / Math.sqrt(square), sum / 20, 1.5);
  }

  @Test
  void aSeedGivesTheSameShakingAgainAndAnotherAnother() {
    assertEquals(shaking(5, 3).factor(7.3, 0.1, -1), shaking(5, 3).factor(7.3, 0.1, -1));
    assertNotEquals(shaking(5, 3).factor(7.3, 0.1, -1), shaking(5, 4).factor(7.3, 0.1, -1));
  }

  @Test
  void steadyThrustIsNotShaken() {
    assertEquals(1, ThrustDisturbance.NONE.factor(3, 0, -1.2));
    assertEquals(0, ThrustDisturbance.NONE.roughness(0, -1.2));
    assertEquals(1, shaking(0, 1).factor(3, 0, -1.2));
  }
}
