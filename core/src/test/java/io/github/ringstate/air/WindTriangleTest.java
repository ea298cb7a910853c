package io.github.ringstate.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindTriangleTest {

  private static WindTriangle triangle(double from, double wind, double track, double ground) {
    return new WindTriangle(
        Wind.from(Unit.DEGREE.toSi(from), Unit.KNOT.toSi(wind)),
        Unit.DEGREE.toSi(track),
        Unit.KNOT.toSi(ground));
  }

  @Test
  void theHandbooksTriangleIsSolvedBackwards() {
    // Pilot's Handbook of Aeronautical Knowledge, FAA-H-8083-25, chapter on navigation, the worked
    // wind triangle: course east, wind from the north-east at 40 kt, true airspeed 120 kt; drawn
    // result ground speed 88 kt, true heading 076 (from memory; arithmetic agrees: drift
    // asin(40 sin 45 / 120) = 13.6 deg, ground speed 116.6 - 28.3 = 88.3 kt). Read off a drawing to
    // a knot and a degree, so half of either comes back with the airspeed.
    WindTriangle solved = triangle(45, 40, 90, 88);
    assertEquals(120, Unit.KNOT.fromSi(solved.airspeed()), 0.5);
    assertEquals(76, Unit.DEGREE.fromSi(solved.heading()), 0.5);
  }

  @ParameterizedTest
  @CsvSource({
    // straight into the wind, with it, and across: arithmetic. Track, tailwind, crosswind, airspeed
    "0, -20, 0, 50",
    "180, 20, 0, 10",
    "90, 0, 20, 36.0555127546399",
    "270, 0, -20, 36.0555127546399"
  })
  void aNorthWindOfTwentyKnotsOnTheFourMainTracksAtThirtyKnots(
      double track, double tail, double cross, double airspeed) {
    WindTriangle solved = triangle(0, 20, track, 30);
    assertEquals(tail, Unit.KNOT.fromSi(solved.tailwind()), 1e-12);
    assertEquals(cross, Unit.KNOT.fromSi(solved.crosswind()), 1e-12);
    assertEquals(airspeed, Unit.KNOT.fromSi(solved.airspeed()), 1e-12);
  }

  @Test
  void theNosePointsIntoTheWindAndTheRelativeWindComesFromThatSide() {
    // 3-4-5 triangle: wind from the left (from 270 on track 0) 30 kt, ground speed 40 kt.
    WindTriangle solved = triangle(270, 30, 0, 40);
    double angle = Math.toDegrees(Math.atan2(3, 4));
    assertEquals(50, Unit.KNOT.fromSi(solved.airspeed()), 1e-12);
    assertEquals(360 - angle, Unit.DEGREE.fromSi(solved.heading()), 1e-9);
    assertEquals(360 - angle, Unit.DEGREE.fromSi(solved.relativeWind()), 1e-9);
  }

  @Test
  void aTailwindFasterThanTheRunComesFromBehindTheNose() {
    assertEquals(180, Unit.DEGREE.fromSi(triangle(180, 30, 0, 20).relativeWind()), 1e-9);
  }

  static LongStream seeds() {
    return LongStream.range(0, 50);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void airspeedAlongTheHeadingAndWindAddUpToTheGroundSpeedAlongTheTrack(long seed) {
    // The definition of the triangle, in components.
    SplittableRandom random = new SplittableRandom(seed);
    double track = random.nextDouble(0, 360);
    double ground = random.nextDouble(0, 60);
    WindTriangle solved =
        triangle(random.nextDouble(0, 360), random.nextDouble(0, 60), track, ground);
    double north = solved.airspeed() * Math.cos(solved.heading()) + solved.wind().north();
    double east = solved.airspeed() * Math.sin(solved.heading()) + solved.wind().east();
    assertEquals(Unit.KNOT.toSi(ground) * Math.cos(Math.toRadians(track)), north, 1e-11);
    assertEquals(Unit.KNOT.toSi(ground) * Math.sin(Math.toRadians(track)), east, 1e-11);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 101, Double.NaN, Double.POSITIVE_INFINITY})
  void aGroundSpeedOutOfRangeIsRefused(double speed) {
    assertThrows(OutOfRangeException.class, () -> new WindTriangle(Wind.CALM, 0, speed));
  }

  @Test
  void aTrackThatIsNoNumberIsRefused() {
    assertThrows(OutOfRangeException.class, () -> new WindTriangle(Wind.CALM, Double.NaN, 10));
  }

  /** With the wind alone there is no airspeed, and so neither a heading nor a wind that is felt. */
  @Test
  void whoDriftsWithTheWindHeadsAlongTheTrackAndFeelsNothing() {
    WindTriangle drifting = new WindTriangle(new Wind(8, 0), 0, 8);
    assertEquals(0, drifting.airspeed());
    assertEquals(0, drifting.heading());
    assertEquals(0, drifting.relativeWind());
    // a ground speed of nothing has no sign
    assertEquals(0, new WindTriangle(Wind.CALM, 0, -0.0).heading());
    // across alone: the air comes from the side, and the heading is into it
    WindTriangle across = new WindTriangle(new Wind(8, -3), 0, 8);
    assertEquals(90, Unit.DEGREE.fromSi(across.relativeWind()), 1e-9);
    assertEquals(90, Unit.DEGREE.fromSi(across.heading()), 1e-9);
  }

  /** A wind from a hair's breadth to the left of the nose is felt from 0, not from a whole turn. */
  @Test
  void aDirectionIsBelowAWholeTurn() {
    WindTriangle hair = new WindTriangle(new Wind(-5, 1e-17), 0, 0);
    assertEquals(0, hair.relativeWind());
    assertEquals(0, hair.heading());
  }
}
