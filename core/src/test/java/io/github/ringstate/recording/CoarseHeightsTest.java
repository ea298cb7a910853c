package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heights that an instrument wrote in coarse steps, exact but for that. */
class CoarseHeightsTest {

  private static final double DOWN = -4;

  /** Level, then 40 s at 4 m/s down, then level again; the steps of 7.62 m are 25 ft. */
  @ParameterizedTest
  @CsvSource({"1, 5", "3, 5", "7.62, 5", "10, 5", "30, 5", "5, 1", "10, 1"})
  void stepsInWhichHeightsAreWrittenAreNoStepsOfTheLevel(double step, int rate) {
    double[] time = IntStream.range(0, 120 * rate).mapToDouble(k -> (double) k / rate).toArray();
    double[] height = new double[time.length];
    for (int k = 0; k < time.length; k++) {
      double flown = 500 + DOWN * FastMath.min(FastMath.max(time[k] - 40, 0), 40);
      height[k] = step * FastMath.rint(flown / step);
    }
    VerticalMotion motion = VerticalMotion.of(new Recording(time, Map.of(Channel.HEIGHT, height)));
    assertEquals(Map.of(), motion.steps());
    assertTrue(
        motion.noise().height() > 0.999 * step / FastMath.sqrt(12),
        () -> motion.noise().toString());
    int before = 35 * rate;
    int after = 85 * rate;
    // the heights themselves are known to half a step at either end
    assertEquals(40 * DOWN, motion.height(after) - motion.height(before), step + 3);
    int middle = 60 * rate;
    double mean = (motion.height(middle + 8 * rate) - motion.height(middle - 8 * rate)) / 16;
    assertEquals(DOWN, mean, step / 16 + 0.2);
  }
}
