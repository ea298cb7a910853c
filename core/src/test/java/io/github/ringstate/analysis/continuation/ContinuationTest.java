package io.github.ringstate.analysis.continuation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.MultivariateVectorFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/**
 * Against normal forms, whose solutions are known in closed form (Kuznetsov, Elements of Applied
 * Bifurcation Theory, ch. 3 and 8: fold a + y^2 = 0, cusp a + b y - y^3 = 0; from memory).
 */
class ContinuationTest {

  private static final MultivariateVectorFunction FOLD =
      place -> new double[] {place[1] + place[0] * place[0]};

  private static Curve curve(MultivariateVectorFunction equations, double[] start, double low) {
    return new Continuation(equations, 0.1, point -> point.parameter() > low, 1000)
        .follow(start, true);
  }

  /** y = -sqrt(-a) and y = +sqrt(-a) meet at a = 0. */
  @Test
  void theNormalFormOfAFoldIsFollowedAround() {
    Curve curve = curve(FOLD, new double[] {-0.9, -1}, -1.01);
    assertEquals(1, curve.turns().size());
    assertEquals(0, curve.turns().get(0).parameter(), 1e-12);
    Fold fold = curve.folds(FOLD).get(0);
    assertEquals(0, fold.parameter(), 1e-12);
    assertEquals(0, fold.unknown(0), 1e-10);
    assertTrue(fold.error() < 1e-8, "error " + fold.error());
    for (CurvePoint point : curve.points()) {
      double y = point.unknown(0);
      assertEquals(-y * y, point.parameter(), 1e-10);
    }
    assertEquals(-1, curve.points().get(0).unknown(0), 1e-10);
    assertTrue(curve.points().get(curve.points().size() - 1).unknown(0) > 1);
  }

  /** A circle about (1, 2) with a second unknown that is its square: folds at a = 2 +- 3. */
  @Test
  void aClosedCurveHasAFoldAtEitherEnd() {
    MultivariateVectorFunction circle =
        place -> {
          double y = place[0] - 1;
          double a = place[2] - 2;
          return new double[] {y * y + a * a - 9, place[1] - y * y};
        };
    Curve curve =
        new Continuation(circle, 0.2, point -> true, 300).follow(new double[] {4, 9, 2}, true);
    List<Fold> folds = curve.folds(circle);
    assertTrue(folds.size() >= 2);
    assertEquals(5, folds.get(0).parameter(), 1e-10);
    assertEquals(1, folds.get(0).unknown(0), 1e-8);
    assertEquals(0, folds.get(0).unknown(1), 1e-8);
    assertEquals(-1, folds.get(1).parameter(), 1e-10);
  }

  /** Every solution on the curve is what a bracketing search finds at the same parameter. */
  @Test
  void theCurveAgreesWithDirectRootFinding() {
    MultivariateVectorFunction cubic =
        place -> new double[] {place[1] + 2 * place[0] - place[0] * place[0] * place[0]};
    Curve curve =
        new Continuation(cubic, 0.1, point -> point.parameter() < 3, 1000)
            .follow(new double[] {-2, -3}, true);
    double turn = Math.sqrt(2.0 / 3);
    List<Fold> folds = curve.folds(cubic);
    assertEquals(2, folds.size());
    assertEquals(-turn, folds.get(0).unknown(0), 1e-8);
    assertEquals(turn, folds.get(1).unknown(0), 1e-8);
    for (CurvePoint point : curve.points()) {
      double y = point.unknown(0);
      double low = y < -turn ? -5 : y < turn ? -turn : turn;
      double high = y < -turn ? -turn : y < turn ? turn : 5;
      double root =
          new BracketingNthOrderBrentSolver(1e-13, 1e-13, 5)
              .solve(200, x -> point.parameter() + 2 * x - x * x * x, low, high);
      assertEquals(root, y, 1e-7);
    }
  }

  /** The folds of the cusp lie at y = +-sqrt(b / 3), a = -+2 (b / 3)^1.5, and meet at b = 0. */
  @Test
  void foldsAreFollowedThroughTheCusp() {
    MultivariateVectorFunction cusp =
        place -> new double[] {place[1] + place[2] * place[0] - place[0] * place[0] * place[0]};
    Fold fold =
        Fold.near(
            place -> cusp.value(new double[] {place[0], place[1], 3}),
            new double[] {0.9, -1.8},
            new double[] {1});
    assertEquals(1, fold.unknown(0), 1e-9);
    assertEquals(-2, fold.parameter(), 1e-9);
    double[] start = Arrays.copyOf(fold.solution(), 4);
    start[3] = 3;
    FoldEquations equations = new FoldEquations(cusp, 1, FoldEquations.STEP);
    Curve curve =
        new Continuation(equations, 0.1, point -> point.parameter() < 3.01, 1000)
            .follow(start, false);
    for (CurvePoint point : curve.points()) {
      double y = point.unknown(0);
      assertEquals(3 * y * y, point.parameter(), 1e-8);
      assertEquals(-2 * y * y * y, point.unknown(1), 1e-8);
    }
    assertEquals(1, curve.turns().size(), "the cusp is the turn of the curve of folds");
    assertEquals(0, curve.turns().get(0).parameter(), 1e-7);
    assertTrue(curve.points().get(curve.points().size() - 1).unknown(0) < -1);
  }

  @Test
  void whereThereIsNoSolutionNoneIsMadeUp() {
    assertThrows(NoSolutionException.class, () -> curve(FOLD, new double[] {0.5, 1}, -1));
  }

  /** d/dx (x^3, |x - c|) by hand; the estimate bounds the error here. */
  @Test
  void slopesComeWithTheirError() {
    Slopes slopes =
        Slopes.of(
            x -> new double[] {x[0] * x[0] * x[0] * x[1], Math.abs(x[1] - 2.0001)},
            new double[] {1.5, 2},
            new double[] {1e-3, 1e-3});
    assertEquals(3 * 1.5 * 1.5 * 2, slopes.values().get(0, 0), 1e-9);
    assertEquals(1.5 * 1.5 * 1.5, slopes.values().get(0, 1), 1e-9);
    assertTrue(slopes.errors().get(0, 0) < 1e-5);
    assertTrue(slopes.errors().get(1, 1) > 0.01, "a corner within the step is noticed");
  }

  /**
   * By hand, for a + b y - y^3: the slope along v is (b - 3 y^2) v. Richardson's extrapolation of
   * central differences is exact for a cubic, whatever the step.
   */
  @Test
  void theFoldEquationsOfACubicAreThoseByHand() {
    MultivariateVectorFunction cubic =
        place ->
            new double[] {
              place[1]
                  + (place.length > 2 ? place[2] : 4) * place[0]
                  - place[0] * place[0] * place[0]
            };
    FoldEquations equations = new FoldEquations(cubic, 1, 0.1);
    // y = 2, a = 5, v = 3, b = 4
    assertArrayEquals(new double[] {5, -24, 4}, equations.value(new double[] {2, 5, 3}), 1e-12);
    // the same, b = 1
    assertArrayEquals(new double[] {-1, -33, 4}, equations.value(new double[] {2, 5, 3, 1}), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new FoldEquations(cubic, 0, 0.1));
    assertThrows(IllegalArgumentException.class, () -> new FoldEquations(cubic, 1, 0));
  }

  /** On a circle of radius 3 the steps grow from a tenth of the longest to the longest. */
  @Test
  void stepsGrowToTheLongestAndPointsEndAtTheMost() {
    MultivariateVectorFunction circle =
        place -> new double[] {place[0] * place[0] + place[1] * place[1] - 9};
    Continuation continuation = new Continuation(circle, 0.2, point -> true, 50);
    List<CurvePoint> points = continuation.follow(new double[] {3, 0}, true).points();
    assertEquals(50, points.size());
    assertEquals(0.02, distance(points.get(0), points.get(1)), 2e-4);
    assertEquals(0.03, distance(points.get(1), points.get(2)), 3e-4);
    for (int i = 1; i < 50; i++) {
      // a step along the tangent, h, ends on the circle at most h^2 / 2 R beside it
      assertTrue(distance(points.get(i - 1), points.get(i)) < 0.2 * 1.01, "step " + i);
    }
    assertEquals(0.2, distance(points.get(48), points.get(49)), 2e-3);
    assertThrows(
        IllegalArgumentException.class, () -> new Continuation(circle, 0, point -> true, 50));
    assertThrows(
        IllegalArgumentException.class, () -> new Continuation(circle, 0.2, point -> true, 1));
    assertEquals(
        2,
        new Continuation(circle, 0.2, point -> true, 2)
            .follow(new double[] {3, 0}, true)
            .points()
            .size());
  }

  /**
   * By hand, for y1^2 + y2 - a and y1 y2 + b: the slopes along v are 2 y1 v1 + v2, y2 v1 + y1 v2.
   */
  @Test
  void theFoldEquationsOfTwoUnknownsAreThoseByHand() {
    MultivariateVectorFunction two =
        place ->
            new double[] {
              place[0] * place[0] + place[1] - place[2],
              place[0] * place[1] + (place.length > 3 ? place[3] : 4)
            };
    FoldEquations equations = new FoldEquations(two, 2, 0.1);
    // y = (2, 3), a = 5, v = (3, 1), b = 4
    assertArrayEquals(
        new double[] {2, 10, 13, 11, 4.5}, equations.value(new double[] {2, 3, 5, 3, 1}), 1e-12);
    // the same, b = 7
    assertArrayEquals(
        new double[] {2, 13, 13, 11, 4.5}, equations.value(new double[] {2, 3, 5, 3, 1, 7}), 1e-12);
  }

  /**
   * Newton's method doubles the digits: for the root of 2 from 1 its steps are 0.5, 0.083, 0.0025,
   * 2.1e-6, 1.6e-12 and rounding.
   */
  @Test
  void newtonsMethodEndsWhereItsStepsAreRounding() {
    Newton root = Newton.solve(x -> new double[] {x[0] * x[0] - 2}, new double[] {1});
    assertEquals(Math.sqrt(2), root.solution()[0], 1e-15);
    assertEquals(6, root.steps());
    assertTrue(root.lastStep() < 1e-12, "last step " + root.lastStep());
  }

  @Test
  void theDirectionAtAFoldMayBeOfAnyLengthButZero() {
    for (double length : new double[] {-50, -0.02, 0.02, 50}) {
      Fold fold = Fold.near(FOLD, new double[] {0.1, 0.1}, new double[] {length});
      assertEquals(0, fold.unknown(0), 1e-10);
    }
    assertThrows(
        IllegalArgumentException.class,
        () -> Fold.near(FOLD, new double[] {0.1, 0.1}, new double[] {0}));
  }

  /**
   * A ripple of sin(w y) c / w moves the fold of a + y^2 to 2 y = -c cos(w y). A central difference
   * of step h makes of the cosine cos(w y) sin(w h) / (w h), and Richardson's extrapolation (4
   * sin(x / 2) / (x / 2) - sin(x) / x) / 3, of x = w h.
   */
  @Test
  void theErrorOfAFoldIsWhatALongerStepChanges() {
    double w = 3e5;
    double c = 1e-6;
    Fold fold =
        Fold.near(
            place ->
                new double[] {place[1] + place[0] * place[0] + c / w * FastMath.sin(w * place[0])},
            new double[] {1e-3, 0},
            new double[] {1});
    double fine = rippleFold(w, c, FoldEquations.STEP);
    double coarse = rippleFold(w, c, 4 * FoldEquations.STEP);
    assertEquals(fine, fold.unknown(0), 1e-9);
    assertEquals(Math.abs(fine - coarse), fold.error(), 1e-9);
  }

  /** Where 2 y = -c s(w h) cos(w y), by iteration. */
  private static double rippleFold(double w, double c, double step) {
    double x = w * step;
    double seen = (8 * FastMath.sin(x / 2) / x - FastMath.sin(x) / x) / 3;
    double y = 0;
    for (int i = 0; i < 100; i++) {
      y = -0.5 * c * seen * FastMath.cos(w * y);
    }
    return y;
  }

  /**
   * A diagonal that ends at 1: differences of 1e-5 keep as far away, and the step falls to 1e-8.
   */
  @Test
  void aCurveEndsCloseToWhereNoSolutionFollows() {
    MultivariateVectorFunction ending =
        place -> {
          if (place[1] > 1) {
            throw new IllegalArgumentException("beyond the end");
          }
          return new double[] {place[0] - place[1]};
        };
    List<CurvePoint> points =
        new Continuation(ending, 0.01, point -> true, 1000)
            .follow(new double[] {0.9, 0.9}, true)
            .points();
    double left = 1 - points.get(points.size() - 1).parameter();
    assertTrue(left > 0.9e-5 && left < 1.002e-5, "left " + left);
  }

  private static double distance(CurvePoint one, CurvePoint other) {
    return Math.hypot(one.unknown(0) - other.unknown(0), one.parameter() - other.parameter());
  }
}
