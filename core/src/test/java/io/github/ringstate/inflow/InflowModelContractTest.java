package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every inflow model. */
class InflowModelContractTest {

  static List<InflowModel> models() {
    return List.of(
        new MomentumTheory(),
        SmoothMomentum.standard(),
        QuarticFit.standard(),
        TwoSegmentFit.standard(),
        new CubicBridge(),
        RingStateInflow.standard(),
        StabilityBoundInflow.standard(),
        new ThreeStateInflow(RingStateInflow.standard()));
  }

  @ParameterizedTest
  @MethodSource("models")
  void theNameIsLowerCaseWordsJoinedByHyphens(InflowModel model) {
    assertTrue(model.name().matches("[a-z]+(-[a-z]+)*"), model.name());
    assertEquals(1, models().stream().filter(m -> m.name().equals(model.name())).count());
  }

  /** Only the three-state model has one, and what stands on it. */
  @ParameterizedTest
  @MethodSource("models")
  void aModelOverAnotherHasItsGradientAndItsName(InflowModel model) {
    InflowModel over = new InflowOver(model) {};
    assertEquals(model.name(), over.name());
    assertEquals(model instanceof ThreeStateInflow, model.hasGradient());
    assertEquals(model.hasGradient(), over.hasGradient());
  }

  @ParameterizedTest
  @MethodSource("models")
  void numbersOutsideTheRangesAndNoNumbersAreRefusedByName(InflowModel model) {
    double x = model.edgewiseRange().high();
    double z = model.axialRange().low();
    assertRefused(model, "edgewise speed", Double.NaN, z);
    assertRefused(model, "axial speed", x, Double.NaN);
    assertRefused(model, "edgewise speed", -0.001, z);
    assertRefused(model, "edgewise speed", x + 0.001, z);
    assertRefused(model, "axial speed", x, z - 0.001);
    assertRefused(model, "axial speed", x, model.axialRange().high() + 0.001);
    assertRefused(model, "axial speed", x, Double.NEGATIVE_INFINITY);
  }

  private static void assertRefused(InflowModel model, String quantity, double x, double z) {
    for (OutOfRangeException refusal :
        List.of(
            assertThrows(OutOfRangeException.class, () -> model.induced(x, z)),
            assertThrows(OutOfRangeException.class, () -> model.total(x, z)),
            assertThrows(OutOfRangeException.class, () -> model.slope(x, z)),
            assertThrows(OutOfRangeException.class, () -> model.lossShare(x, z)))) {
      assertTrue(refusal.getMessage().startsWith(quantity), refusal.getMessage());
      assertTrue(refusal.getMessage().contains(OutOfRangeException.OUTSIDE));
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void theCornersOfTheRangesAreAccepted(InflowModel model) {
    for (double x : new double[] {model.edgewiseRange().low(), model.edgewiseRange().high()}) {
      for (double z : new double[] {model.axialRange().low(), model.axialRange().high()}) {
        assertTrue(model.induced(x, z) > 0);
        assertTrue(Double.isFinite(model.slope(x, z)));
      }
    }
  }

  /** Source: the slope's definition, by central differences. */
  @ParameterizedTest
  @MethodSource("models")
  void theSlopeIsThatOfTheTotalInflow(InflowModel model) {
    SplittableRandom random = new SplittableRandom(21);
    double h = 1e-5;
    int checked = 0;
    for (int i = 0; i < 20_000; i++) {
      double x = Math.min(model.edgewiseRange().high(), 3 * random.nextDouble());
      double z = Math.min(model.axialRange().high() - h, 3 - 7 * random.nextDouble());
      z = Math.max(z, model.axialRange().low() + h);
      if (isLeftOut(model, x, z, h)) {
        continue;
      }
      double difference = (model.total(x, z + h) - model.total(x, z - h)) / (2 * h);
      double slope = model.slope(x, z);
      assertEquals(
          difference, slope, 1e-7 * (1 + slope * slope * slope * slope), "x " + x + ", z " + z);
      checked++;
    }
    assertTrue(checked > 10_000);
  }

  /** Where a model is refused, and across the jumps that two of the models are known to have. */
  private static boolean isLeftOut(InflowModel model, double x, double z, double h) {
    if (model instanceof MomentumTheory) {
      return x < MomentumTheory.singleRootEdgewise() && z > -2 - 1e-3 && z < h;
    }
    if (model instanceof TwoSegmentFit) {
      return Math.abs(z + 1.5) <= h;
    }
    if (model instanceof CubicBridge) {
      boolean edge = CubicBridge.inside(x, z - h) != CubicBridge.inside(x, z + h);
      return edge || (x < MomentumTheory.singleRootEdgewise() && Math.abs(z + 2) < 2e-3);
    }
    return false;
  }

  @ParameterizedTest
  @MethodSource("models")
  void totalIsAxialPlusInducedAndTheBitsRepeat(InflowModel model) {
    SplittableRandom random = new SplittableRandom(22);
    for (int i = 0; i < 2000; i++) {
      double x = Math.min(model.edgewiseRange().high(), 0.63 + 3 * random.nextDouble());
      double z = Math.min(model.axialRange().high(), 3 - 5 * random.nextDouble());
      double v = model.induced(x, z);
      assertEquals(z + v, model.total(x, z), 0.0);
      assertEquals(Double.doubleToLongBits(v), Double.doubleToLongBits(model.induced(x, z)));
      double share = model.lossShare(x, z);
      assertTrue(share >= 0 && share <= 1);
    }
  }
}
