package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StabilityBoundInflowTest {

  private final StabilityBoundInflow model = StabilityBoundInflow.standard();

  private static StabilityBoundInflow with(Parameter parameter, double value) {
    return new StabilityBoundInflow(
        ParameterSet.standard(StabilityBoundInflow.PARAMETERS).with(parameter, value));
  }

  /** The closed form of the boundary, against a search for where the slope changes its sign. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.2, 0.5, 0.7, 0.9, 0.94})
  void dampingIsLostAndReturnsWhereTheBoundarySays(double x) {
    var bands = new HeaveDamping(model).bands(x);
    assertEquals(1, bands.size());
    double h = 1 - (x / 0.95) * (x / 0.95);
    double middle = (-0.45 - 1.5) / 2;
    assertEquals(middle + h * (-0.45 - middle), bands.get(0).onset(), 1e-6);
    assertEquals(middle + h * (-1.5 - middle), bands.get(0).exit().orElseThrow(), 1e-6);
  }

  @Test
  void theBoundaryClosesAtItsEdgewiseSpeed() {
    assertEquals(0.95, new HeaveDamping(model).reach().orElseThrow(), 1e-3);
    assertTrue(new HeaveDamping(model).bands(0.96).isEmpty());
  }

  @Test
  void itPassesThroughItsFourPointsAndIsMomentumTheoryBeyond() {
    SmoothMomentum smooth = SmoothMomentum.standard();
    assertEquals(smooth.total(0, -0.2), model.total(0, -0.2), 1e-12);
    assertEquals(0.85, model.total(0, -0.45), 1e-12);
    assertEquals(1, model.total(0, -1.5), 1e-12);
    assertEquals(smooth.total(0, -2), model.total(0, -2 + 1e-12), 1e-9);
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 1000; i++) {
      double x = 2 * random.nextDouble();
      double z = random.nextBoolean() ? 3 * random.nextDouble() - 0.2 : -2 - random.nextDouble();
      assertEquals(smooth.induced(x, z), model.induced(x, z), 0.0);
    }
  }

  /** No jump, at the corner where the boundary closes either: a change never exceeds its share. */
  @Test
  void theInflowIsContinuous() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 20_000; i++) {
      double x = 0.7 + 0.4 * random.nextDouble();
      double z = -2.2 * random.nextDouble();
      double step = 1e-6 * random.nextDouble();
      double there = model.induced(x + step, z + step);
      assertEquals(model.induced(x, z), there, 2e-5, "x " + x + ", z " + z);
    }
  }

  /**
   * Source: Fritsch and Carlson, SIAM Journal on Numerical Analysis 17, 1980 (from memory): a cubic
   * falls all along if its slopes stay within three times its chord. Of momentum theory's bridge.
   */
  @Test
  void theFallFromDToNIsAtLeastAThirdOfTheSlopeAtD() {
    SmoothMomentum smooth = SmoothMomentum.standard();
    double greatest = smooth.total(0, -0.2) - smooth.slope(0, -0.2) * 0.25 / 3;
    assertEquals(
        greatest - 1e-9,
        with(StabilityBoundInflow.LOST_TOTAL, greatest - 1e-9).total(0, -0.45),
        1e-12);
    IncompatibleValuesException refusal =
        assertThrows(
            IncompatibleValuesException.class,
            () -> with(StabilityBoundInflow.LOST_TOTAL, greatest + 1e-9));
    assertTrue(refusal.getMessage().contains(Double.toString(greatest).substring(0, 12)));
  }

  @Test
  void numbersWithoutAFoldAreRefused() {
    // the fall from D to N would have to turn over
    assertThrows(
        IncompatibleValuesException.class, () -> with(StabilityBoundInflow.LOST_TOTAL, 0.9));
    assertThrows(
        IncompatibleValuesException.class,
        () -> with(StabilityBoundInflow.BACK_TOTAL, 0.8).total(0, 0));
    // no rise from N to X
    assertThrows(
        IncompatibleValuesException.class, () -> with(StabilityBoundInflow.BACK_TOTAL, 0.85));
    for (double lost : new double[] {-0.3, -0.35}) {
      IncompatibleValuesException refusal =
          assertThrows(
              IncompatibleValuesException.class,
              () ->
                  new StabilityBoundInflow(
                      ParameterSet.standard(StabilityBoundInflow.PARAMETERS)
                          .with(StabilityBoundInflow.UPPER_END, -0.35)
                          .with(StabilityBoundInflow.LOST_AXIAL, lost)));
      assertTrue(refusal.getMessage().contains(StabilityBoundInflow.UPPER_END.name()));
    }
    assertEquals(
        0.9,
        with(StabilityBoundInflow.CLOSED_EDGEWISE, 0.9)
            .numbers()
            .get(StabilityBoundInflow.CLOSED_EDGEWISE));
  }
}
