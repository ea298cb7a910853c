package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The properties that the model used in flight must have. */
class RingStateInflowTest {

  private static final double[] AXIAL_SEAMS = {0, -0.5, -0.8, -1.45, -2.3};
  private static final double[] EDGEWISE_SEAMS = {0.65, 1.0, 1.15};

  private final RingStateInflow ring = RingStateInflow.standard();

  static List<InflowModel> smoothModels() {
    return List.of(RingStateInflow.standard(), SmoothMomentum.standard());
  }

  /**
   * A jump keeps its height when the step shrinks; a continuous function's largest difference
   * between neighbours shrinks with the step.
   */
  @ParameterizedTest
  @MethodSource("smoothModels")
  void inflowSlopeAndLossShareHaveNoJumpAnywhere(InflowModel model) {
    for (DoubleBinaryOperator f :
        List.<DoubleBinaryOperator>of(model::induced, model::slope, model::lossShare)) {
      double coarse = largestDifference(f, 0.02);
      double fine = largestDifference(f, 0.004);
      assertTrue(fine <= 0.3 * coarse, model.name() + ": " + coarse + " to " + fine);
    }
  }

  /** The measure above can fail: the cubic bridge is known to jump by 0.06. */
  @Test
  void theSameMeasureSeesTheJumpOfTheCubicBridge() {
    DoubleBinaryOperator f = (x, z) -> new CubicBridge().induced(x, Math.min(z, -1.7));
    double coarse = largestDifference(f, 0.02);
    double fine = largestDifference(f, 0.004);
    assertTrue(fine > 0.5 * coarse, coarse + " to " + fine);
  }

  private static double largestDifference(DoubleBinaryOperator f, double step) {
    double largest = 0;
    int columns = (int) Math.rint(4 / step);
    int rows = (int) Math.rint(7 / step);
    double[] before = new double[rows + 1];
    for (int i = 0; i <= columns; i++) {
      for (int j = 0; j <= rows; j++) {
        double value = f.applyAsDouble(i * step, -4 + j * step);
        if (i > 0) {
          largest = Math.max(largest, Math.abs(value - before[j]));
        }
        if (j > 0) {
          largest = Math.max(largest, Math.abs(value - before[j - 1]));
        }
        before[j] = value;
      }
    }
    return largest;
  }

  @ParameterizedTest
  @MethodSource("smoothModels")
  void theSlopesOnBothSidesOfEverySeamAgree(InflowModel model) {
    for (double x = 0; x <= 4; x += 0.0101) {
      for (double seam : AXIAL_SEAMS) {
        double at = x;
        assertSmoothAt(seam, z -> model.induced(at, z), "axial " + seam + " at x = " + x);
        assertSmoothAt(seam, z -> model.lossShare(at, z), "share, axial " + seam + " at x = " + x);
      }
    }
    for (double z = -4; z <= 3; z += 0.0101) {
      for (double seam : EDGEWISE_SEAMS) {
        double at = z;
        assertSmoothAt(seam, x -> model.induced(x, at), "edgewise " + seam + " at z = " + z);
        assertSmoothAt(seam, x -> model.lossShare(x, at), "share, edgewise " + seam + " at " + z);
      }
    }
  }

  /** One-sided differences of second order; no jump and no corner. */
  private static void assertSmoothAt(double seam, DoubleUnaryOperator f, String where) {
    double h = 1e-4;
    double here = f.applyAsDouble(seam);
    assertEquals(here, f.applyAsDouble(Math.nextUp(seam)), 1e-12, where);
    assertEquals(here, f.applyAsDouble(Math.nextDown(seam)), 1e-12, where);
    double right =
        (-3 * here + 4 * f.applyAsDouble(seam + h) - f.applyAsDouble(seam + 2 * h)) / (2 * h);
    double left =
        (3 * here - 4 * f.applyAsDouble(seam - h) + f.applyAsDouble(seam - 2 * h)) / (2 * h);
    assertEquals(left, right, 2e-5, where);
  }

  /** Source: momentum theory. The model is asked for 1 % and gives rounding. */
  @ParameterizedTest
  @MethodSource("smoothModels")
  void itIsMomentumTheoryOutsideTheRing(InflowModel model) {
    MomentumTheory theory = new MomentumTheory();
    for (double x = 0; x <= 6; x += 0.013) {
      for (double z = -6; z <= 5; z += 0.017) {
        if (z >= 0 || z <= -2.3 || x >= 1.2) {
          double v = theory.induced(x, z);
          assertEquals(v, model.induced(x, z), 1e-14 * v, "x = " + x + ", z = " + z);
          assertEquals(0, model.lossShare(x, z));
        }
      }
    }
  }

  /**
   * Source: Hermite data of the model's own definition; hover, onset and exit as its parameters
   * say.
   */
  @Test
  void theAxialCurvePassesThroughHoverOnsetAndExit() {
    assertEquals(1.0, ring.total(0, 0), 1e-15);
    assertEquals(0.5, ring.slope(0, 0), 1e-14);
    assertEquals(0.90, ring.total(0, -0.5), 1e-14);
    assertEquals(0, ring.slope(0, -0.5), 1e-14);
    assertEquals(1.25, ring.total(0, -1.45), 1e-14);
    assertEquals(0, ring.slope(0, -1.45), 1e-14);
  }

  /** Source: the steepest point of a cubic with level ends, 1.5 times its chord. */
  @Test
  void theFoldIsSteepestHalfwayDown() {
    double least = 0;
    for (int i = 0; i <= 4000; i++) {
      for (double x : new double[] {0, 0.2, 0.5, 0.7}) {
        least = Math.min(least, ring.slope(x, -i * 1e-3));
      }
    }
    assertEquals(-1.5 * 0.35 / 0.95, least, 1e-4);
  }

  @Test
  void theTotalInflowOfSmoothMomentumRisesWithTheAxialSpeedEverywhere() {
    SmoothMomentum smooth = SmoothMomentum.standard();
    for (double x = 0; x <= 3; x += 0.01) {
      for (double z = -5; z <= 3; z += 0.01) {
        assertTrue(smooth.slope(x, z) > 0.2, "x = " + x + ", z = " + z);
      }
    }
  }

  @Test
  void theLossShareIsZeroInHoverOneInTheRingAndZeroAtTheLowerJoin() {
    assertEquals(0, ring.lossShare(0, 0));
    assertEquals(0.5, ring.lossShare(0, -0.25), 1e-15);
    for (double z = -1.45; z <= -0.5; z += 0.05) {
      assertEquals(1, ring.lossShare(0, z), 1e-15);
    }
    assertEquals(0, ring.lossShare(0, -2.3));
    assertEquals(0, ring.lossShare(1.15, -1));
    double before = 1;
    for (double x = 0; x < 1.2; x += 0.01) {
      assertTrue(ring.lossShare(x, -1) <= before);
      before = ring.lossShare(x, -1);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void anyParametersGiveOneFoldOnTheAxisAndNoJump(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int built = 0;
    for (int set = 0; set < 40; set++) {
      ParameterSet parameters = randomSet(random);
      if (isRefused(parameters)) {
        assertThrows(IllegalArgumentException.class, () -> new RingStateInflow(parameters));
        continue;
      }
      RingStateInflow model = new RingStateInflow(parameters);
      built++;
      List<RingBand> bands = new HeaveDamping(model).bands(0);
      assertEquals(1, bands.size(), parameters.toString());
      assertEquals(parameters.get(RingStateInflow.ONSET_AXIAL), bands.get(0).onset(), 1e-9);
      assertEquals(
          parameters.get(RingStateInflow.EXIT_AXIAL), bands.get(0).exit().orElseThrow(), 1e-9);
      double h = 1e-5;
      for (int i = 0; i < 200; i++) {
        double x = 1.4 * random.nextDouble();
        double z = 0.5 - 3.5 * random.nextDouble();
        double difference = (model.total(x, z + h) - model.total(x, z - h)) / (2 * h);
        assertEquals(difference, model.slope(x, z), 2e-4, parameters.toString());
      }
      for (Parameter seam :
          List.of(
              RingStateInflow.ONSET_AXIAL,
              RingStateInflow.EXIT_AXIAL,
              SmoothMomentum.UPPER_JOIN,
              SmoothMomentum.LOWER_JOIN)) {
        double z = parameters.get(seam);
        double x = 1.4 * random.nextDouble();
        assertEquals(model.slope(x, z - 1e-9), model.slope(x, z + 1e-9), 1e-6, seam.name());
        assertEquals(model.induced(x, z - 1e-9), model.induced(x, z + 1e-9), 1e-7, seam.name());
      }
    }
    assertTrue(built > 25, "only " + built + " sets were accepted");
  }

  private static boolean isRefused(ParameterSet p) {
    return !(p.get(RingStateInflow.ONSET_AXIAL) - p.get(RingStateInflow.EXIT_AXIAL) >= 0.05)
        || !(p.get(RingStateInflow.EXIT_TOTAL) - p.get(RingStateInflow.ONSET_TOTAL) >= 0.05);
  }

  /** A value anywhere in each range, the ends more often than their share. */
  private static ParameterSet randomSet(SplittableRandom random) {
    ParameterSet set = ParameterSet.standard(RingStateInflow.PARAMETERS);
    for (Parameter parameter : set.parameters()) {
      double low = parameter.quantity().low();
      double high = parameter.quantity().high();
      double value =
          switch (random.nextInt(6)) {
            case 0 -> low;
            case 1 -> high;
            default -> Math.min(high, low + random.nextDouble() * (high - low));
          };
      set = set.with(parameter, value);
    }
    return set;
  }

  /** What is not promised, and how far it goes: see the class comment of RingStateInflow. */
  @Test
  void awayFromTheStandardValuesTheTipOfTheBoundaryMaySplitButOnlyTheTip() {
    SplittableRandom random = new SplittableRandom(31);
    int built = 0;
    int split = 0;
    for (int k = 0; k < 120; k++) {
      ParameterSet parameters = randomSet(random);
      if (isRefused(parameters)) {
        continue;
      }
      built++;
      RingStateInflow model = new RingStateInflow(parameters);
      HeaveDamping damping = new HeaveDamping(model);
      double reach = damping.reach().orElseThrow();
      boolean whole = true;
      for (int i = 0; i < 50; i++) {
        double x = reach * i / 50;
        List<RingBand> bands = damping.bands(x);
        whole &= bands.size() == 1;
        for (int j = 1; j < bands.size(); j++) {
          assertTrue(x > 0.9 * reach, "x = " + x + " of " + reach + ", " + parameters);
          double middle = 0.5 * (bands.get(j - 1).exit().orElseThrow() + bands.get(j).onset());
          assertTrue(model.slope(x, middle) < 0.05, parameters.toString());
        }
      }
      split += whole ? 0 : 1;
    }
    assertTrue(split < 0.1 * built, split + " of " + built);
  }

  @Test
  void aFoldThatIsNoneIsRefused() {
    ParameterSet standard = ParameterSet.standard(RingStateInflow.PARAMETERS);
    ParameterSet noBand =
        standard.with(RingStateInflow.ONSET_AXIAL, -1).with(RingStateInflow.EXIT_AXIAL, -1.02);
    ParameterSet noRise =
        standard.with(RingStateInflow.ONSET_TOTAL, 0.97).with(RingStateInflow.EXIT_TOTAL, 0.96);
    for (ParameterSet bad : List.of(noBand, noRise)) {
      String message =
          assertThrows(IllegalArgumentException.class, () -> new RingStateInflow(bad)).getMessage();
      assertTrue(message.contains("must exceed") && message.contains("0.05"), message);
    }
    assertThrows(
        OutOfRangeException.class, () -> standard.with(RingStateInflow.EXIT_AXIAL, Double.NaN));
  }
}
