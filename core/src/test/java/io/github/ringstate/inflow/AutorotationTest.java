package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Quantity;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AutorotationTest {

  /** Source: arithmetic on the published coefficients of each fit. */
  @Test
  void theFitsAutorotateWhereTheirPublishedFormsCrossZero() {
    assertEquals(-1.7766, at(new QuarticFit(1)), 5e-5);
    assertEquals(-1.75, at(new TwoSegmentFit(1)), 1e-12);
    assertEquals(-7 * 1.15 / (1 + 3 * 1.15), at(new TwoSegmentFit(1.15)), 1e-12);
    assertEquals(-1.630, at(new CubicBridge()), 5e-4);
  }

  private static double at(InflowModel model) {
    double z = Autorotation.axialSpeed(model, 0).orElseThrow();
    assertEquals(0, model.total(0, z), 1e-12);
    return z;
  }

  /**
   * Source: equivalent drag coefficient of a rotor in vertical autorotation 1.1 to 1.3 on disc area
   * (Johnson, Helicopter Theory, 1980, from memory).
   */
  @Test
  void theRingStateModelAutorotatesLikeADiscOfThePublishedDrag() {
    double z = at(RingStateInflow.standard());
    double drag = Autorotation.discDragCoefficient(z);
    assertTrue(drag > 1.1 && drag < 1.3, "drag coefficient " + drag);
    assertEquals(-1.8, z, 0.1);
  }

  /** Source: Leishman, Principles of Helicopter Aerodynamics, ch. 12: CD = 1.25 gives 1.79. */
  @Test
  void aDiscDragOfOneAndAQuarterMeansSinkingAt179Hundredths() {
    assertEquals(1.25, Autorotation.discDragCoefficient(-1.789), 1e-3);
    assertEquals(1.25, Autorotation.discDragCoefficient(-1.79), 2e-3);
  }

  /** Source: elementary; with z + v = 0 momentum theory is v = 1 / x. */
  @ParameterizedTest
  @ValueSource(doubles = {1.2, 1.5, 2, 4, 50})
  void inForwardFlightTheDescentOfAutorotationIsTheInverseOfTheSpeed(double x) {
    assertEquals(
        -1 / x, Autorotation.axialSpeed(RingStateInflow.standard(), x).orElseThrow(), 1e-12);
    assertEquals(-1 / x, Autorotation.axialSpeed(new MomentumTheory(), x).orElseThrow(), 1e-12);
  }

  @Test
  void inAModelThatEndsStillBlownDownwardThereIsNoAutorotation() {
    assertEquals(OptionalDouble.empty(), Autorotation.axialSpeed(new HoverOnly(), 0));
  }

  @Test
  void momentumTheoryHasNoVerticalAutorotation() {
    assertThrows(OutOfRangeException.class, () -> Autorotation.axialSpeed(new MomentumTheory(), 0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, Double.NaN})
  void aDiscThatDoesNotSinkHasNoDragCoefficient(double z) {
    assertThrows(IllegalArgumentException.class, () -> Autorotation.discDragCoefficient(z));
  }

  /** A model made for slow vertical flight only. */
  private static final class HoverOnly implements InflowModel {

    @Override
    public String name() {
      return "hover-only";
    }

    @Override
    public Quantity edgewiseRange() {
      return HoverUnits.EDGEWISE.within(0, 0);
    }

    @Override
    public Quantity axialRange() {
      return HoverUnits.AXIAL.within(-0.3, 0.3);
    }

    @Override
    public double induced(double edgewise, double axial) {
      edgewiseRange().check(edgewise);
      return 1 - 0.5 * axialRange().check(axial);
    }

    @Override
    public double slope(double edgewise, double axial) {
      return 0.5;
    }

    @Override
    public double lossShare(double edgewise, double axial) {
      return 0;
    }
  }
}
