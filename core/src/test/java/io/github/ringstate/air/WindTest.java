package io.github.ringstate.air;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindTest {

  private static final double TURN = 2 * Math.PI;

  static Stream<Arguments> winds() {
    SplittableRandom random = new SplittableRandom(20);
    return Stream.generate(
            () ->
                Arguments.of(
                    random.nextDouble(0, TURN),
                    random.nextDouble(0.1, 100),
                    random.nextDouble(-TURN, TURN)))
        .limit(100);
  }

  /** By hand from the sine and cosine of 0, 30, 45, 60 and 90 degrees. */
  @ParameterizedTest
  @CsvSource({
    "0, -10, 0",
    "30, -8.660254037844386, -5",
    "90, 0, -10",
    "135, 7.0710678118654755, -7.0710678118654755",
    "180, 10, 0",
    "240, 5, 8.660254037844386",
    "270, 0, 10",
    "315, -7.0710678118654755, 7.0710678118654755",
    "360, -10, 0",
    "-90, 0, 10"
  })
  void airMovesAwayFromTheDirectionThatTheWindIsNamedAfter(
      double degrees, double north, double east) {
    Wind wind = Wind.from(Unit.DEGREE.toSi(degrees), 10);
    assertEquals(north, wind.north(), 1e-13);
    assertEquals(east, wind.east(), 1e-13);
  }

  @ParameterizedTest
  @MethodSource("winds")
  void directionAndSpeedAreReadBack(double from, double speed, double track) {
    Wind wind = Wind.from(from, speed);
    assertEquals(speed, wind.speed(), 1e-13 * speed);
    assertEquals(from, wind.directionFrom(), 1e-14 * TURN);
  }

  /** A headwind of speed times cosine of the angle off, a crosswind of speed times sine. */
  @ParameterizedTest
  @MethodSource("winds")
  void componentsFollowTheAngleBetweenWindAndTrack(double from, double speed, double track) {
    Wind wind = Wind.from(from, speed);
    assertEquals(-speed * Math.cos(from - track), wind.along(track), 1e-13 * speed);
    assertEquals(-speed * Math.sin(from - track), wind.across(track), 1e-13 * speed);
  }

  @ParameterizedTest
  @MethodSource("winds")
  void componentsRepeatEveryTurnAndChangeSignOnTheWayBack(double from, double speed, double track) {
    Wind wind = Wind.from(from, speed);
    assertEquals(wind.along(track), wind.along(track + TURN), 1e-13 * speed);
    assertEquals(wind.across(track), wind.across(track - TURN), 1e-13 * speed);
    assertEquals(wind.along(track), -wind.along(track + Math.PI), 1e-13 * speed);
    assertEquals(wind.across(track), -wind.across(track + Math.PI), 1e-13 * speed);
  }

  @Test
  void aWindFromTheLeftDriftsToTheRight() {
    Wind westerly = Wind.from(Unit.DEGREE.toSi(270), 10);
    assertEquals(10, westerly.across(0), 1e-13);
    assertEquals(10, westerly.along(Unit.DEGREE.toSi(90)), 1e-13);
  }

  @Test
  void directionsLieInOneTurn() {
    assertEquals(0, new Wind(-10, 0).directionFrom());
    assertEquals(0, new Wind(-10, 1e-300).directionFrom());
    assertEquals(Math.PI, new Wind(10, 0).directionFrom());
    assertEquals(1.5 * Math.PI, new Wind(0, 10).directionFrom());
    assertEquals(0.5 * Math.PI, new Wind(0, -10).directionFrom());
  }

  @Test
  void noWindIsCalmFromAnyDirection() {
    assertEquals(Wind.CALM, Wind.from(Unit.DEGREE.toSi(77), 0));
    assertEquals(Wind.CALM, new Wind(-0.0, -0.0));
    assertEquals(0, Wind.CALM.speed());
    assertEquals(0, Wind.CALM.directionFrom());
  }

  @Test
  void aUniformWindIsTheSameEverywhereAndLevel() {
    double[] velocity = {9, 9, 9};
    new Wind(3, -4).velocity(7, 100, 200, 300, velocity);
    assertArrayEquals(new double[] {3, -4, 0}, velocity);
  }

  private static final Wind UNIFORM = new Wind(3.25, -4.75);
  private static final WindField SHEARED = PowerLawWind.of(UNIFORM, 0.28);

  static Stream<Arguments> fields() {
    Gusts gusts = Gusts.of(LowAltitudeGusts.at(30, 12.125), 8.375, 4321).withoutWavesShorterThan(7);
    return Stream.of(
        Arguments.of(UNIFORM, false, List.of("3.25", "-4.75")),
        Arguments.of(SHEARED, true, List.of("3.25", "-4.75", "0.28", "2.0", "275.0")),
        Arguments.of(
            TurningWind.of(UNIFORM, 0.625, 11, 22),
            false,
            List.of("3.25", "-4.75", "0.625", "11.0", "22.0")),
        Arguments.of(
            TurningWind.of(SHEARED, 0.625, 11, 22),
            true,
            List.of("3.25", "0.28", "0.625", "11.0", "22.0")),
        Arguments.of(
            GustyWind.of(UNIFORM, gusts, 0.875),
            false,
            List.of("3.25", "8.375", "4321", "7.0", "0.875")),
        Arguments.of(
            GustyWind.of(SHEARED, gusts, 0.875),
            true,
            List.of("0.28", "8.375", "4321", "7.0", "0.875")));
  }

  /** The law of heights alone varies with height, and what turns it or gusts on it. */
  @ParameterizedTest
  @MethodSource("fields")
  void aFieldKnowsWhetherItVariesAndItsTextHoldsItsNumbers(
      WindField field, boolean varies, List<String> numbers) {
    assertEquals(varies, field.variesWithHeight());
    for (String number : numbers) {
      assertTrue(field.toString().contains(number), field.toString());
    }
    WindField unknown = (time, north, east, height, result) -> {};
    assertTrue(unknown.variesWithHeight());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -101, 101})
  void impossibleWindsAreRefused(double value) {
    assertRefused(() -> new Wind(value, 0));
    assertRefused(() -> new Wind(0, value));
    assertRefused(() -> Wind.from(0, value));
    assertRefused(() -> Wind.from(value, 1));
    assertRefused(() -> Wind.CALM.along(value));
    assertRefused(() -> Wind.CALM.across(value));
  }

  @Test
  void negativeSpeedIsRefused() {
    assertRefused(() -> Wind.from(0, -1));
  }

  private static void assertRefused(org.junit.jupiter.api.function.Executable call) {
    OutOfRangeException refusal = assertThrows(OutOfRangeException.class, call);
    assertTrue(refusal.getMessage().contains(OutOfRangeException.OUTSIDE));
  }
}
