package io.github.ringstate.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeightVelocityCurveTest {

  private static HeightVelocityCurve curve(double... airspeedsAndHeights) {
    HeightVelocityCurve.Point[] points =
        new HeightVelocityCurve.Point[airspeedsAndHeights.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] =
          new HeightVelocityCurve.Point(airspeedsAndHeights[2 * i], airspeedsAndHeights[2 * i + 1]);
    }
    return new HeightVelocityCurve(List.of(points));
  }

  /** An invented curve: 0 m/s at 100 m, the knee of 20 m/s at 40 m, 0 m/s at 4 m. */
  private static final HeightVelocityCurve WHOLE = curve(0, 100, 20, 40, 0, 4);

  @ParameterizedTest
  @CsvSource({"100, 0", "70, 10", "40, 20", "22, 10", "4, 0"})
  void betweenPointsTheCurveIsStraight(double height, double airspeed) {
    assertEquals(airspeed, WHOLE.minimumAirspeed(height).getAsDouble(), 1e-12);
  }

  @Test
  void aboveAndBelowItsEndsTheCurveAsksForNothing() {
    assertTrue(WHOLE.minimumAirspeed(100.1).isEmpty());
    assertTrue(WHOLE.minimumAirspeed(3.9).isEmpty());
    assertTrue(HeightVelocityCurve.NONE.minimumAirspeed(10).isEmpty());
    assertFalse(HeightVelocityCurve.NONE.isKnown());
  }

  @Test
  void anEndThatWasNotCopiedBoundsTooMuchRatherThanTooLittle() {
    HeightVelocityCurve upper = curve(5, 100, 20, 40);
    assertEquals(OptionalDouble.of(20), upper.minimumAirspeed(1));
    assertEquals(OptionalDouble.of(5), upper.minimumAirspeed(100));
    assertTrue(upper.minimumAirspeed(101).isEmpty());
    // one point: a corner
    assertEquals(OptionalDouble.of(15), curve(15, 50).minimumAirspeed(20));
  }

  @Test
  void thePointsMayBeGivenFromBelow() {
    List<HeightVelocityCurve.Point> reversed =
        Arrays.asList(WHOLE.points().toArray(HeightVelocityCurve.Point[]::new));
    Collections.reverse(reversed);
    assertEquals(WHOLE, new HeightVelocityCurve(reversed));
    // a line that ends as high as it begins has no below
    HeightVelocityCurve level = curve(0, 50, 10, 20, 5, 50);
    assertEquals(0, level.points().get(0).airspeed());
  }

  @Test
  void aPointThatIsNoneIsRefused() {
    assertThrows(OutOfRangeException.class, () -> curve(-1, 10));
    assertThrows(OutOfRangeException.class, () -> curve(1, Double.NaN));
  }
}
