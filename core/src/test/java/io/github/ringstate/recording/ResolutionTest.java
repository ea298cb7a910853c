package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.quantity.Unit;
import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A descent of 100 m in 200 readings, that wavers by 2 m, written in steps or not. */
class ResolutionTest {

  private static double[] written(double step) {
    SplittableRandom random = new SplittableRandom(7);
    return IntStream.range(0, 200)
        .mapToDouble(k -> 400 - k / 2.0 + 2 * random.nextGaussian())
        .map(height -> step == 0 ? height : step * FastMath.rint(height / step))
        .toArray();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2.5, 7.62, 10, 30.48})
  void aStepIsFoundFromTheValues(double step) {
    assertEquals(step, Resolution.of(written(step)), 1e-9);
    double[] few = written(step);
    few[20] = Double.NaN;
    few[30] += 0.4 * step; // one in 200 may be anything
    assertEquals(step, Resolution.of(few), 1e-9);
  }

  /** Steps need not begin at zero, nor the lowest value be one of them. */
  @Test
  void whereStepsBeginDoesNotMatter() {
    double[] values = Arrays.stream(written(10)).map(value -> value + 3.3).toArray();
    for (int k = 0; k < values.length; k += 9) {
      values[k] = Double.NaN;
    }
    values[190] = 100;
    assertEquals(10, Resolution.of(values), 1e-9);
  }

  @Test
  void aStepIsTheLesserGapAndMetTwiceAtTheAverage() {
    assertEquals(10, Resolution.of(0, 0, 10, 10, 30, 30));
    assertEquals(10, Resolution.of(30, 30, 20, 20, 0, 0));
    assertEquals(10, Resolution.of(0, 0, 0, 0, 10, 20));
    assertEquals(Double.NaN, Resolution.of(0, 0, 0, 10, 20));
  }

  @Test
  void twoInAHundredMayLieElsewhereAndNotThree() {
    double[] values = IntStream.range(0, 100).mapToDouble(k -> 10 * (k % 10)).toArray();
    values[11] = 4;
    values[21] = 4;
    assertEquals(10, Resolution.of(values));
    values[31] = 4;
    assertEquals(Double.NaN, Resolution.of(values));
  }

  /** As 33 ft is written in metres with one decimal: 10.1, 20.1, 30.2. */
  @Test
  void stepsThatWereRoundedOnceMoreAreStepsStill() {
    double[] rounded = written(Unit.FOOT.toSi(33));
    for (int k = 0; k < rounded.length; k++) {
      rounded[k] = FastMath.rint(rounded[k] * 10) / 10;
    }
    assertEquals(10.06, Resolution.of(rounded), 0.1);
  }

  @Test
  void valuesWithoutStepsShowNone() {
    assertEquals(Double.NaN, Resolution.of(written(0)));
    assertEquals(Double.NaN, Resolution.of());
    assertEquals(Double.NaN, Resolution.of(1, 1, 1, 1, 1));
    assertEquals(Double.NaN, Resolution.of(1, 1, 1, 5, 5, 5), "two values may be anything");
    // far apart because there are few of them, or because the height went so fast
    assertEquals(Double.NaN, Resolution.of(460, 441.7, 423.4, 405.1, 386.8, 368.5));
    // on two levels, as after another setting of the altimeter
    double[] levels = written(10);
    for (int k = 100; k < levels.length; k++) {
      levels[k] += 3.7;
    }
    assertEquals(Double.NaN, Resolution.of(levels));
  }

  @Test
  void aRecordingTellsItOfItsChannels() {
    double[] time = IntStream.range(0, 200).mapToDouble(k -> k).toArray();
    Recording recording = new Recording(time, Map.of(Channel.HEIGHT, written(10)));
    assertEquals(10, recording.resolution(Channel.HEIGHT));
    assertEquals(Double.NaN, recording.resolution(Channel.VERTICAL_SPEED));
    assertEquals(10, recording.heightResolution());
    assertEquals(5, both(time, 10, 5).heightResolution());
    assertEquals(Double.NaN, both(time, 10, 0).heightResolution(), "one is fine enough");
    assertEquals(
        Double.NaN,
        new Recording(time, Map.of(Channel.VERTICAL_SPEED, written(10))).heightResolution());
  }

  private static Recording both(double[] time, double height, double altitude) {
    return new Recording(
        time,
        Map.of(Channel.HEIGHT, written(height), Channel.PRESSURE_ALTITUDE, written(altitude)));
  }
}
