package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MomentumTheoryTest {

  private static final MathContext DIGITS = new MathContext(50);

  private final MomentumTheory theory = new MomentumTheory();

  static java.util.List<String[]> reference() {
    return ReferenceTable.rows("momentum_theory.csv");
  }

  /** Source: computed from the formula with 50-digit arithmetic; see the file's first lines. */
  @ParameterizedTest
  @MethodSource("reference")
  void agreesWithTheValuesOfTheFormula(String x, String z, String v, String branch, String note) {
    assertEquals(
        Double.parseDouble(v),
        theory.induced(Double.parseDouble(x), Double.parseDouble(z)),
        1e-9,
        branch + note);
  }

  /** Source: the textbook closed forms in axial flow, in a form that does not cancel. */
  @Test
  void axialFlowFollowsTheClosedForms() {
    for (int i = 0; i <= 2000; i++) {
      double z = i * 0.05;
      double climb = 2 / (z + Math.sqrt(z * z + 4));
      assertEquals(climb, theory.induced(0, z), 4e-16 * climb);
    }
    for (int i = 0; i <= 2000; i++) {
      double z = -2 - i * 0.049;
      double windmill = 2 / (-z + Math.sqrt((z - 2) * (z + 2)));
      assertEquals(windmill, theory.induced(0, z), 1e-15 * windmill, "z = " + z);
    }
  }

  /** Source: in level flight v^2 = -x^2/2 + sqrt(x^4/4 + 1), the textbook closed form. */
  @Test
  void levelFlightFollowsTheClosedForm() {
    for (int i = 0; i <= 2000; i++) {
      double x = i * 0.05;
      double level = Math.sqrt(2 / (x * x + Math.sqrt(x * x * x * x + 4)));
      assertEquals(level, theory.induced(x, 0), 1e-15 * level);
    }
  }

  /** Source: one step of Newton's method on the quartic in 50-digit decimal arithmetic. */
  @Test
  void everyRootIsAccurateToTwelveDigits() {
    SplittableRandom random = new SplittableRandom(11);
    double worst = 0;
    for (int i = 0; i < 20_000; i++) {
      double x = spread(random.nextDouble());
      double z = (random.nextBoolean() ? 1 : -1) * spread(random.nextDouble());
      if (z < 0 && z > -2 && x < MomentumTheory.singleRootEdgewise()) {
        continue;
      }
      double v = theory.induced(x, z);
      double slope = theory.slope(x, z);
      if (slope > 50) {
        continue; // beside the triple root, where the input itself fixes no more digits
      }
      worst = Math.max(worst, Math.abs(exactCorrection(x, z, v)));
    }
    assertTrue(worst < 1e-12, "largest error " + worst);
  }

  /**
   * Source: as above. At z = -2 the two windmill roots are apart by less than the square root of
   * eps.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-12, 1e-9, 1e-6, 1e-3, 0.01, 0.1, 0.3, 0.5, 0.6})
  void theWindmillRootKeepsItsDigitsAtTheIdealLimit(double x) {
    for (double depth : new double[] {0, 1e-12, 1e-8, 1e-4, 0.01, 0.05, 0.0999}) {
      double z = -2 - depth;
      double v = theory.induced(x, z);
      // The turning point of the branch; the root must lie on its windmill side.
      assertTrue(z + v <= -1, "total inflow " + (z + v));
      if (depth > 0 || x > 0) {
        assertEquals(0, exactCorrection(x, z, v), 1e-12, "x = " + x + ", z = " + z);
      } else {
        assertEquals(1, v);
      }
    }
  }

  /**
   * Source: LaguerreSolver of the library Hipparchus on the quartic v^4 + 2 z v^3 + (x^2 + z^2) v^2
   * - 1.
   */
  @Test
  void theRootsAreThoseOfAnIndependentPolynomialSolver() {
    SplittableRandom random = new SplittableRandom(12);
    int threefold = 0;
    for (int i = 0; i < 3000; i++) {
      double x = 0.05 + 1.2 * random.nextDouble();
      double z = 4 - 8 * random.nextDouble();
      Complex[] complex =
          new LaguerreSolver().solveAllComplex(new double[] {-1, 0, x * x + z * z, 2 * z, 1}, 1.0);
      double[] expected =
          Arrays.stream(complex)
              .filter(c -> Math.abs(c.getImaginary()) < 1e-6 && c.getReal() > 0)
              .mapToDouble(Complex::getReal)
              .sorted()
              .toArray();
      boolean nearlyDouble =
          Arrays.stream(complex).anyMatch(c -> c.getReal() > 0 && isNearlyDouble(x, z, c));
      if (nearlyDouble) {
        continue;
      }
      threefold += expected.length == 3 ? 1 : 0;
      assertArrayEquals(expected, MomentumTheory.roots(x, z), 1e-8, "x = " + x + ", z = " + z);
    }
    assertTrue(threefold > 100, "only " + threefold + " points with three roots were met");
  }

  private static boolean isNearlyDouble(double x, double z, Complex v) {
    Complex w = v.add(z);
    Complex derivative = v.multiply(2).multiply(w.multiply(w).add(x * x).add(v.multiply(w)));
    return derivative.norm() < 1e-2;
  }

  /** Source: elementary; on the axis (z + v) v = 1 for one root and -1 for the two others. */
  @Test
  void theAxialRootsAreThoseOfTwoQuadratics() {
    assertArrayEquals(
        new double[] {1.25 - 0.75, 1.25 + 0.75, 1.25 + Math.sqrt(2.5625)},
        MomentumTheory.roots(0, -2.5),
        1e-15);
    assertArrayEquals(new double[] {1, 1 + Math.sqrt(2)}, MomentumTheory.roots(0, -2), 1e-15);
    assertArrayEquals(new double[] {0.5 + Math.sqrt(1.25)}, MomentumTheory.roots(0, -1), 1e-15);
    assertArrayEquals(new double[] {2}, MomentumTheory.roots(0, -1.5), 1e-15);
  }

  /** Source: as above; the roots depend on the square of the edgewise speed. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-5, 1e-8, 1e-9, 1e-12, 1e-170, Double.MIN_VALUE})
  void aTraceOfEdgewiseSpeedLeavesTheAxialRoots(double trace) {
    assertEquals(1, theory.induced(trace, -2), trace + 1e-15);
    for (double z : new double[] {-1.5, -1.9, -2.05, -2.5, -90}) {
      assertArrayEquals(
          MomentumTheory.roots(0, z), MomentumTheory.roots(trace, z), 1e-6, "z = " + z);
    }
  }

  /** Source: elementary; the climb roots at z and -z have the product 1. */
  @Test
  void theClimbRootMirrorsItsContinuationIntoDescent() {
    for (int i = 1; i <= 1000; i++) {
      double z = i * 0.1;
      double[] mirrored = MomentumTheory.roots(0, -z);
      assertEquals(1, theory.induced(0, z) * mirrored[mirrored.length - 1], 1e-14);
    }
  }

  /** Source: a count of sign changes of the equation along v, without any solver. */
  @Test
  void thereIsOneRootFromTheCornerOnAndThereAreThreeJustBelowIt() {
    assertEquals(0.6204, MomentumTheory.singleRootEdgewise(), 5e-5);
    double corner = MomentumTheory.singleRootEdgewise();
    int most = 0;
    for (double z = -1.9; z <= -1.6; z += 0.0005) {
      assertEquals(1, signChanges(corner + 1e-9, z));
      assertEquals(1, MomentumTheory.roots(corner + 1e-9, z).length);
      most = Math.max(most, signChanges(corner - 0.01, z));
      assertEquals(signChanges(corner - 0.01, z), MomentumTheory.roots(corner - 0.01, z).length);
    }
    assertEquals(3, most);
  }

  private static int signChanges(double x, double z) {
    int changes = 0;
    double before = -1;
    for (int i = 1; i <= 20_000; i++) {
      double v = i * 1.5e-4;
      double f = v * v * (x * x + (z + v) * (z + v)) - 1;
      changes += f * before < 0 ? 1 : 0;
      before = f;
    }
    return changes;
  }

  @Test
  void theSlopeInHoverIsOneHalfAndStandsUprightAtTheIdealWindmillLimit() {
    assertEquals(0.5, theory.slope(0, 0), 1e-15);
    assertEquals(Double.POSITIVE_INFINITY, theory.slope(0, -2));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, -0.5, -1, -1.999})
  void theGapBetweenHoverAndWindmillBrakeIsRefused(double z) {
    for (double x : new double[] {0, 0.3, 0.6203}) {
      OutOfRangeException refusal =
          assertThrows(OutOfRangeException.class, () -> theory.induced(x, z));
      assertTrue(refusal.getMessage().contains(OutOfRangeException.OUTSIDE));
      assertEquals(MomentumTheory.singleRootEdgewise(), refusal.quantity().low());
      assertThrows(OutOfRangeException.class, () -> theory.slope(x, z));
      assertThrows(OutOfRangeException.class, () -> theory.lossShare(x, z));
    }
    assertTrue(theory.induced(MomentumTheory.singleRootEdgewise(), z) > 0);
  }

  private static double spread(double u) {
    return 100 * u * u * u;
  }

  /** The difference between a root and the exact root near it, to first order. */
  private static double exactCorrection(double x, double z, double v) {
    BigDecimal bx = new BigDecimal(x);
    BigDecimal bv = new BigDecimal(v);
    BigDecimal bw = new BigDecimal(z).add(bv);
    BigDecimal q = bx.multiply(bx).add(bw.multiply(bw));
    BigDecimal p = bv.multiply(bv).multiply(q).subtract(BigDecimal.ONE);
    BigDecimal derivative = bv.multiply(q.add(bv.multiply(bw))).multiply(BigDecimal.valueOf(2));
    return p.divide(derivative, DIGITS).doubleValue();
  }
}
