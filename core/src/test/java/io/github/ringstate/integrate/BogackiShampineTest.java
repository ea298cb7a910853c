package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.integrate.Problem.Point;
import io.github.ringstate.integrate.Problem.Rates;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Single steps against polynomials and exponentials that are known exactly. */
class BogackiShampineTest {

  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static Equations<Point> equations(double[] start, Rates rates) {
    return new Problem("", start, 0, rates, t -> start, at -> 0, true, 0).equations();
  }

  private static BogackiShampine<Point> at(double[] start, int stiff) {
    double[] scales = new double[start.length];
    Arrays.fill(scales, 1);
    BogackiShampine<Point> step = new BogackiShampine<>(scales, stiff);
    System.arraycopy(start, 0, step.state(), 0, start.length);
    return step;
  }

  /** One step along a cubic in time of which the slope is 3 a t^2 + 2 b t + c, from y(0) = d. */
  private static BogackiShampine<Point> alongCubic(
      double h, double a, double b, double c, double d) {
    double[] start = {7, d};
    Equations<Point> equations =
        equations(
            start,
            (t, y, rates) -> {
              rates[0] = 0;
              rates[1] = (3 * a * t + 2 * b) * t + c;
            });
    BogackiShampine<Point> step = at(start, -1);
    step.begin(equations, 0);
    step.attempt(equations, 0, h, 0);
    return step;
  }

  /** A method of order three integrates slopes that are quadratic in time exactly. */
  @Test
  void aCubicInTimeIsFollowedExactly() {
    BogackiShampine<Point> step = alongCubic(2, 0.5, -3, 1, 4);
    for (double s : new double[] {0, 0.1, 0.5, 0.83, 1}) {
      double t = 2 * s;
      assertEquals(((0.5 * t - 3) * t + 1) * t + 4, step.within(2, s)[1], 1e-13);
      assertEquals(7, step.within(2, s)[0], 1e-13);
    }
    step.moveOn();
    assertEquals(-2, step.state()[1], 1e-13);
  }

  /**
   * The weights of the error estimate are the differences of both formulas, 2/9 - 7/24, 1/3 - 1/4,
   * 4/9 - 1/3 and -1/8 (Bogacki and Shampine, 1989): for y' = 3 t^2 from 0 they make 3 h^3 (1/12 /
   * 4 + 1/9 * 9/16 - 1/8) = -h^3 / 8.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void theErrorOfAStepIsTheNormInTheScalesOfAllQuantities(int size) {
    double[] scales = new double[size];
    double squares = 0;
    for (int i = 0; i < size; i++) {
      scales[i] = i + 2;
      squares += scales[i] * scales[i];
    }
    Equations<Point> equations =
        equations(new double[size], (t, y, rates) -> Arrays.fill(rates, 3 * t * t));
    BogackiShampine<Point> step = new BogackiShampine<>(scales, -1);
    step.begin(equations, 0);
    double error = step.attempt(equations, 0, 0.4, 0);
    assertEquals(0.064 / 8 * FastMath.sqrt(squares), error, 1e-14);
  }

  /**
   * Two quantities, w' = -w and v' = -c (v - w), of which the second follows the first: w = e^-t
   * and v = c / (c - 1) e^-t + (v0 - c / (c - 1)) e^-ct. Linear, with eigenvalues -1 and -c.
   */
  private static double errorOfFollowing(double rate, int steps, double v0) {
    double h = 2.0 / steps;
    double[] start = {1, v0, 1};
    Equations<Point> equations =
        equations(
            start,
            (t, y, rates) -> {
              rates[0] = -y[0];
              rates[1] = -rate * (y[1] - y[0]);
              rates[2] = 3 * t * t;
            });
    BogackiShampine<Point> step = at(start, 1);
    step.begin(equations, 0);
    for (int i = 0; i < steps; i++) {
      step.attempt(equations, i * h, h, rate);
      step.moveOn();
    }
    double slow = rate / (rate - 1);
    double exact = slow * FastMath.exp(-2) + (v0 - slow) * FastMath.exp(-2 * rate);
    // what stands beside the stiff quantity is stepped by the plain method
    assertEquals(FastMath.exp(-2), step.state()[0], 0.02 * h * h * h);
    assertEquals(9, step.state()[2], 1e-12);
    return FastMath.abs(step.state()[1] - exact);
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 60, 200})
  void aStiffQuantityFollowsASlowOneWithTheThirdOrder(double rate) {
    double slow = rate / (rate - 1);
    // steps of 2 to 20 times what the plain method bears
    assertTrue(errorOfFollowing(rate, 10, slow) < 2e-3, "" + errorOfFollowing(rate, 10, slow));
    double order =
        FastMath.log(errorOfFollowing(rate, 20, 0) / errorOfFollowing(rate, 80, 0))
            / FastMath.log(4);
    assertTrue(order > 2.3, "order " + order);
  }

  /** The stages of a stiff step lie at its middle and at three quarters of it. */
  @Test
  void ratesAreAskedForAtTheInstantsOfTheStages() {
    for (int stiff : new int[] {-1, 0}) {
      List<Double> times = new ArrayList<>();
      Equations<Point> equations =
          equations(new double[] {1}, (t, y, rates) -> rates[0] = times.add(t) ? -y[0] : 0);
      BogackiShampine<Point> step = at(new double[] {1}, stiff);
      step.begin(equations, 3);
      step.attempt(equations, 3, 0.4, 1);
      assertEquals(List.of(3.0, 3.2, 3 + 0.75 * 0.4, 3.4), times);
    }
  }

  /**
   * (t - m)^2 (t + p) + q has its valley at m: expanded, t^3 + (p - 2m) t^2 + (m^2 - 2mp) t + ...
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.3, 0.9, -2",
    "1, 0.7, 0.4, 5",
    "2, 0.3, 4, 1",
    "0.5, 0.01, 3, 0",
    "3, 2.9, 1.5, -7",
    "0.1, 0.05, 60, 2"
  })
  void theValleyOfACubicIsItsMinimum(double h, double m, double p, double q) {
    BogackiShampine<Point> step = alongCubic(h, 1, p - 2 * m, m * m - 2 * m * p, m * m * p + q);
    assertEquals(q, step.valley(1, h, 1), 1e-12);
    assertEquals(q, step.valley(1, h, m / h + 1e-6), 1e-12);
    assertEquals(INFINITE, step.valley(1, h, m / h - 1e-6));
    // what stands still has none
    assertEquals(INFINITE, step.valley(0, h, 1));
    // nor has the same turned over, which has a hill
    assertEquals(INFINITE, alongCubic(h, -1, 2 * m - p, 2 * m * p - m * m, 0).valley(1, h, 1));
  }

  @Test
  void aParabolaHasItsValleyWhereItsLowestPointIs() {
    assertEquals(-0.16, alongCubic(1, 0, 1, -0.8, 0).valley(1, 1, 1), 1e-15);
    // at the very ends it is none
    assertEquals(INFINITE, alongCubic(1, 0, 1, 0, 0).valley(1, 1, 1));
    assertEquals(INFINITE, alongCubic(1, 0, 1, -2, 0).valley(1, 1, 1));
    // falling or rising all the way
    assertEquals(INFINITE, alongCubic(1, 0, 0, -1, 0).valley(1, 1, 1));
    assertEquals(INFINITE, alongCubic(1, 0, 0, 1, 0).valley(1, 1, 1));
  }

  @Test
  void aStepThatWasNotTriedHasNoEnd() {
    BogackiShampine<Point> step = at(new double[] {1}, -1);
    assertThrows(IllegalStateException.class, step::end);
    Equations<Point> equations = equations(new double[] {1}, (t, y, rates) -> rates[0] = 2);
    step.begin(equations, 1);
    step.attempt(equations, 1, 0.5, 0);
    assertEquals(1.5, step.end().time());
    assertArrayEquals(new double[] {2}, step.end().state(), 1e-15);
  }
}
