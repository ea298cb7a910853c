package io.github.ringstate.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.differentiation.FiniteDifferencesDifferentiator;
import org.junit.jupiter.api.Test;

class SoftLimitTest {

  /** Second method: the hard limit convolved with the bell, by quadrature. */
  @Test
  void softLimitsAreHardOnesConvolvedWithTheBell() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 5000; i++) {
      double limit = 0.01 + 10 * random.nextDouble();
      double x = limit * (4 * random.nextDouble() - 2);
      assertEquals(ConvolvedLimit.within(x, limit), SoftLimit.within(x, limit), 1e-12 * limit);
      assertEquals(ConvolvedLimit.positive(x, limit), SoftLimit.positive(x, limit), 1e-12 * limit);
      assertEquals(
          ConvolvedLimit.positive(x, limit) + ConvolvedLimit.positive(-x, limit),
          SoftLimit.size(x, limit),
          1e-12 * limit);
    }
  }

  @Test
  void beyondTheWidthTheyAreExact() {
    assertEquals(0.5, SoftLimit.within(0.5, 1));
    assertEquals(-0.5, SoftLimit.within(-0.5, 1));
    assertEquals(1, SoftLimit.within(1.5, 1));
    assertEquals(-1, SoftLimit.within(-1e300, 1));
    assertEquals(0, SoftLimit.positive(-2, 2));
    assertEquals(2, SoftLimit.positive(2, 2));
    assertEquals(35.0 / 256 * 3, SoftLimit.positive(0, 3), 1e-15);
    assertEquals(1 - 35.0 / 512, SoftLimit.within(1, 1), 1e-15);
    assertEquals(7, SoftLimit.size(-7, 2));
  }

  @Test
  void derivativesUpToTheFourthAreContinuous() {
    for (int order = 1; order <= 4; order++) {
      for (double corner : new double[] {-1.5, -0.5, 0.5, 1.5}) {
        assertEquals(
            derivative(x -> SoftLimit.within(x, 1), order, corner - 0.02),
            derivative(x -> SoftLimit.within(x, 1), order, corner + 0.02),
            // one order further it jumps at most by its greatest slope, some hundreds, times 0.04
            order < 4 ? 1 : 40,
            order + " " + corner);
      }
    }
    assertEquals(0, derivative(x -> SoftLimit.within(x, 1), 4, 0.51), 10);
  }

  private static double derivative(DoubleUnaryOperator function, int order, double x) {
    return new FiniteDifferencesDifferentiator(7, 2e-3)
        .differentiate(function::applyAsDouble)
        .value(new org.hipparchus.analysis.differentiation.DSFactory(1, order).variable(0, x))
        .getPartialDerivative(order);
  }

  @Test
  void whatIsNoNumberStaysNone() {
    assertTrue(Double.isNaN(SoftLimit.within(Double.NaN, 1)));
    assertTrue(Double.isNaN(SoftLimit.positive(Double.NaN, 1)));
    assertTrue(Double.isNaN(SoftLimit.size(Double.NaN, 1)));
  }

  @Test
  void whatIsLimitedNeverFallsAndNeverPassesTheLimit() {
    double before = -3;
    for (double x = -4; x <= 4; x += 1e-3) {
      double held = SoftLimit.within(x, 2);
      assertTrue(held >= before && Math.abs(held) <= 2, x + " " + held);
      before = held;
    }
  }
}
