package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecayWeightsTest {

  /** Bogacki and Shampine, Applied Mathematics Letters 2, 1989: 1/2; 0, 3/4; 2/9, 1/3, 4/9. */
  @Test
  void withoutDecayTheyAreBogackiAndShampines() {
    DecayWeights weights = new DecayWeights();
    weights.of(0);
    assertEquals(0.5, weights.second(1), 1e-15);
    assertEquals(0, weights.third(1, 0), 1e-15);
    assertEquals(0.75, weights.third(0, 1), 1e-15);
    assertEquals(2.0 / 9, weights.end(1, 0, 0), 1e-15);
    assertEquals(1.0 / 3, weights.end(0, 1, 0), 1e-15);
    assertEquals(4.0 / 9, weights.end(0, 0, 1), 1e-15);
  }

  /** Exact solution: v = (1 - e^-a) / a of the step times n for a constant n. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 0.000999, 0.001001, 0.3, 2, 40, 800})
  void decayTowardsAFixedValueIsExactForAnyStep(double decay) {
    DecayWeights weights = new DecayWeights();
    weights.of(decay);
    double exact = -FastMath.expm1(-decay) / decay;
    assertEquals(exact, weights.end(1, 1, 1), 1e-10 * exact);
    double half = -FastMath.expm1(-0.5 * decay) / decay;
    assertEquals(half, weights.second(1), 1e-10 * half);
    double most = -FastMath.expm1(-0.75 * decay) / decay;
    assertEquals(most, weights.third(1, 1), 1e-10 * most);
  }

  private static double phi2(double a) {
    return a < 1e-2
        ? 0.5 - a / 6 + a * a / 24 - a * a * a / 120 + a * a * a * a / 720
        : (a + FastMath.expm1(-a)) / (a * a);
  }

  /** Exact solution: where n grows as t from zero, v is phi2(a) of the step's square. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 0.000999, 0.001001, 0.3, 2, 40, 800})
  void decayTowardsAValueThatMovesSteadilyIsExactForAnyStep(double decay) {
    DecayWeights weights = new DecayWeights();
    weights.of(decay);
    assertEquals(phi2(decay), weights.end(0, 0.5, 0.75), 1e-9 * phi2(decay));
  }

  /**
   * The order conditions that concern the stages alone, whatever the decay (Hochbruck and
   * Ostermann, SIAM Journal on Numerical Analysis 43, 2005, table 5.2; from memory): with psi_i =
   * c_i^2 phi2(c_i a) less what stage i makes of n = t, b_2 psi_2 + b_3 psi_3 vanishes.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 0.000999, 0.0014, 0.3, 2, 40, 800})
  void theErrorsOfTheStagesCancelForAnyStep(double decay) {
    DecayWeights weights = new DecayWeights();
    weights.of(decay);
    double second = 0.25 * phi2(0.5 * decay) - weights.second(0);
    double third = 0.5625 * phi2(0.75 * decay) - weights.third(0, 0.5);
    assertEquals(0, weights.end(0, second, third), 1e-9 * weights.end(0, second, 0));
    assertTrue(second > 0 && third < 0, second + " and " + third);
  }

  /**
   * Exact solution: v' = -50 (v - cos t) - sin t with v(0) = 1 is v = cos t. The error falls with
   * the third power of the step, at steps from half to eight times what the plain method bears.
   */
  @Test
  void aMovingTargetIsFollowedToTheThirdOrder() {
    double before = error(64);
    for (int steps = 128; steps <= 1024; steps *= 2) {
      double error = error(steps);
      double order = FastMath.log(before / error) / FastMath.log(2);
      assertTrue(order > 2.7, steps + " steps: order " + order + ", error " + error);
      before = error;
    }
    assertTrue(error(20) < 5e-3, "" + error(20));
  }

  private static double error(int steps) {
    double rate = 50;
    double h = 4.0 / steps;
    DecayWeights weights = new DecayWeights();
    weights.of(rate * h);
    double v = 1;
    for (int i = 0; i < steps; i++) {
      double t = i * h;
      double n1 = slope(rate, t, v);
      double at2 = v + h * weights.second(n1);
      double n2 = slope(rate, t + 0.5 * h, at2) + rate * (at2 - v);
      double at3 = v + h * weights.third(n1, n2);
      double n3 = slope(rate, t + 0.75 * h, at3) + rate * (at3 - v);
      v += h * weights.end(n1, n2, n3);
    }
    return Math.abs(v - FastMath.cos(4));
  }

  private static double slope(double rate, double t, double v) {
    return -rate * (v - FastMath.cos(t)) - FastMath.sin(t);
  }
}
