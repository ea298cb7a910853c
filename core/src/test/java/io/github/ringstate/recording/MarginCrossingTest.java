package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Map;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/** By hand: margins at readings, and when they became negative. */
class MarginCrossingTest {

  private static final double TINY = 1e-12;

  /** Readings of these margins, so many seconds apart. */
  private static MarginCrossing crossing(double apart, int first, double... margin) {
    double[] time = new double[margin.length];
    for (int k = 0; k < time.length; k++) {
      time[k] = 100 + apart * k;
    }
    return new MarginCrossing(recording(time), margin, first);
  }

  private static Recording recording(double... time) {
    double[] height = new double[time.length];
    Arrays.fill(height, 300);
    return new Recording(time, Map.of(Channel.HEIGHT, height));
  }

  @Test
  void aStraightMarginIsKnownAsWellAsItsErrorOverItsRate() {
    MarginCrossing slow = crossing(1, 3, 0.5, 0.3, 0.1, -0.1, -0.3, -0.5);
    assertEquals(102.5, slow.time(), TINY);
    assertEquals(0.02 / 0.2, slow.deviation(0.02), TINY);
    MarginCrossing fast = crossing(0.2, 3, 0.5, 0.3, 0.1, -0.3, -0.7, -1.1);
    assertEquals(100.45, fast.time(), TINY);
    // over two readings either way: 1.4 in 0.8 s; its bend, 0.2, is off by an eighth of that
    assertEquals(FastMath.hypot(0.02, 0.2 / 8) / (1.4 / 0.8), fast.deviation(0.02), 1e-9);
  }

  @Test
  void aMarginThatBendsIsOffTheLineBetweenTwoReadings() {
    MarginCrossing bent = crossing(1, 2, 0.3, 0.1, -0.2, -0.2);
    // bends of -0.1 and 0.3
    assertEquals(FastMath.hypot(0.02, 0.3 / 8) / 0.3, bent.deviation(0.02), TINY);
    MarginCrossing other = crossing(1, 2, 0.9, 0.1, -0.1, -0.3);
    assertEquals(FastMath.hypot(0.02, 0.6 / 8) / 0.2, other.deviation(0.02), TINY);
    MarginCrossing last = crossing(1, 2, 0.9, 0.1, -0.1);
    assertEquals(FastMath.hypot(0.02, 0.6 / 8) / 0.2, last.deviation(0.02), TINY);
    MarginCrossing unknown = crossing(1, 2, Double.NaN, 0.1, -0.1, -0.3);
    assertEquals(0.02 / 0.2, unknown.deviation(0.02), TINY);
  }

  @Test
  void noTimeIsTenTimesWorseThanTheReadingsAround() {
    assertEquals(10 * 1, crossing(1, 1, 0.1, -0.1, -0.3).deviation(1000), TINY);
    assertEquals(10 * 0.8, crossing(0.2, 2, 0.3, 0.1, -0.1, -0.3, -0.5).deviation(1000), TINY);
  }

  @Test
  void fromWhereNoBoundaryIsNearItIsAnywhereBetweenTheReadings() {
    double near = crossing(1, 1, 0.999, -0.999, -2.997).deviation(0.02);
    assertEquals(0.02 / 1.998, near, TINY);
    double far = crossing(1, 1, 1, -1, -3).deviation(0.02);
    assertEquals(FastMath.hypot(0.02 / 2, 1 / FastMath.sqrt(12)), far, TINY);
  }

  @Test
  void whatWasNotSeenIsAtTheFirstReadingInsideAndOpen() {
    MarginCrossing begun = crossing(1, 0, -0.2, -0.3, -0.4);
    assertEquals(100, begun.time());
    assertEquals(1, begun.deviation(0.02), TINY);
    MarginCrossing unknown = crossing(0.2, 2, 0.3, Double.NaN, -0.1, -0.3, -0.5);
    assertEquals(100.4, unknown.time(), TINY);
    assertEquals(0.8, unknown.deviation(0.02), TINY);
    MarginCrossing rising = crossing(1, 1, 0.1, -0.1, 0.3);
    assertEquals(100.5, rising.time(), TINY);
    assertEquals(1, crossing(1, 1, -0.3, -0.1, 0.3).deviation(0.02), TINY);
  }

  @Test
  void acrossMoreThanFiveSecondsNothingIsSaid() {
    double[] margin = {0.3, 0.1, -0.1, -0.3};
    MarginCrossing seen = new MarginCrossing(recording(0, 1, 6, 7), margin, 2);
    assertEquals(3.5, seen.time(), TINY);
    MarginCrossing gap = new MarginCrossing(recording(0, 1, 6.1, 7), margin, 2);
    assertEquals(6.1, gap.time());
    assertEquals(5.1, gap.deviation(0.02), TINY);
  }
}
