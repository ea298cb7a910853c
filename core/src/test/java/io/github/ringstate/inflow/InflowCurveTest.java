package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

class InflowCurveTest {

  @Test
  void bothEndsAreSampledExactlyAndThePointsAreEvenlySpaced() {
    RingStateInflow ring = RingStateInflow.standard();
    InflowCurve curve = InflowCurve.sample(ring, 0.3, 0, -2.5, 26);
    assertEquals("ring-state", curve.model());
    assertEquals(26, curve.points().size());
    assertEquals(0, curve.points().get(0).axial());
    assertEquals(-2.5, curve.points().get(25).axial());
    for (int i = 0; i < 26; i++) {
      InflowCurve.Point point = curve.points().get(i);
      assertEquals(-0.1 * i, point.axial(), 1e-15);
      assertEquals(ring.induced(0.3, point.axial()), point.induced());
      assertEquals(ring.total(0.3, point.axial()), point.total());
      assertEquals(ring.slope(0.3, point.axial()), point.slope());
    }
  }

  @Test
  void twoPointsAreTheEnds() {
    InflowCurve curve = InflowCurve.sample(SmoothMomentum.standard(), 0, 0.7, -1.3, 2);
    assertEquals(2, curve.points().size());
    assertEquals(0.7, curve.points().get(0).axial());
    assertEquals(-1.3, curve.points().get(1).axial());
  }

  @Test
  void aCurveThatLeavesTheModelIsRefusedAsAWhole() {
    assertThrows(
        OutOfRangeException.class,
        () -> InflowCurve.sample(QuarticFit.standard(), 0, 0, -2.01, 10));
    assertThrows(
        OutOfRangeException.class,
        () -> InflowCurve.sample(new MomentumTheory(), 0.2, 0.5, -2.5, 31));
    assertThrows(
        IllegalArgumentException.class,
        () -> InflowCurve.sample(QuarticFit.standard(), 0, 0, -2, 1));
  }

  @Test
  void thePointsCannotBeChanged() {
    InflowCurve curve = InflowCurve.sample(QuarticFit.standard(), 0, 0, -2, 3);
    assertThrows(UnsupportedOperationException.class, () -> curve.points().clear());
  }
}
