package io.github.ringstate.air;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PowerLawWindTest {

  private static final Wind AT_TEN_METRES = new Wind(6, -8);

  static DoubleStream exponents() {
    return DoubleStream.of(0, 0.11, PowerLawWind.EXPONENT_OPEN_LAND, 0.28);
  }

  @ParameterizedTest
  @MethodSource("exponents")
  void theWindAtTheReferenceHeightIsTheReference(double exponent) {
    double[] velocity = new double[3];
    PowerLawWind.of(AT_TEN_METRES, exponent).velocity(0, 0, 0, 10, velocity);
    assertArrayEquals(new double[] {6, -8, 0}, velocity);
  }

  /** One-seventh law by hand: the seventh power of the ratio of speeds is the ratio of heights. */
  @ParameterizedTest
  @ValueSource(doubles = {2, 5, 20, 100, 275})
  void theSeventhPowerOfSpeedGrowsAsHeightOverOpenLand(double height) {
    double[] velocity = new double[3];
    PowerLawWind.of(AT_TEN_METRES, PowerLawWind.EXPONENT_OPEN_LAND)
        .velocity(0, 0, 0, height, velocity);
    double ratio = Math.hypot(velocity[0], velocity[1]) / 10;
    double seventh = ratio * ratio * ratio * ratio * ratio * ratio * ratio;
    assertEquals(height / 10, seventh, 1e-13 * height);
    assertEquals(-0.75, velocity[0] / velocity[1], 1e-15, "direction");
  }

  @Test
  void theWindIsHeldBelowTheLowestAndAboveTheGradientHeight() {
    PowerLawWind wind = PowerLawWind.of(AT_TEN_METRES, 0.28);
    assertEquals(wind.speedRatio(2), wind.speedRatio(0));
    assertEquals(wind.speedRatio(2), wind.speedRatio(-3));
    assertEquals(wind.speedRatio(275), wind.speedRatio(3000));
  }

  @Test
  void wrongNumbersAreRefused() {
    PowerLawWind wind = PowerLawWind.of(AT_TEN_METRES, 0.1);
    for (double bad : new double[] {Double.NaN, -1, Double.POSITIVE_INFINITY}) {
      assertRefused(() -> PowerLawWind.of(AT_TEN_METRES, bad));
      assertRefused(() -> new PowerLawWind(AT_TEN_METRES, bad, 0.1, 2, 275));
      assertRefused(() -> new PowerLawWind(AT_TEN_METRES, 10, 0.1, bad, 275));
      assertRefused(() -> new PowerLawWind(AT_TEN_METRES, 10, 0.1, 2, bad));
    }
    assertRefused(() -> new PowerLawWind(AT_TEN_METRES, 200, 0.1, 2, 199));
    assertRefused(() -> wind.speedRatio(Double.NaN));
    assertRefused(() -> wind.velocity(0, 0, 0, Double.NaN, new double[3]));
  }

  private static void assertRefused(org.junit.jupiter.api.function.Executable call) {
    assertThrows(OutOfRangeException.class, call);
  }
}
