package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

class WindEstimateTest {

  private static final double NORTH = -4;
  private static final double EAST = 3;

  /**
   * A flight through a wind that wavers by 0.5 m/s, at an airspeed of 30 m/s that wavers as much.
   *
   * @param turn how far the flight turns in all, rad
   * @param air whether airspeed and heading are written down
   */
  private static Recording flight(double turn, boolean air, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int size = 900;
    double[] time = new double[size];
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    for (Channel channel : Channel.values()) {
      values.put(channel, new double[size]);
    }
    double gustNorth = 0;
    double gustEast = 0;
    double faster = 0;
    for (int k = 0; k < size; k++) {
      if (k % 50 == 0) {
        gustNorth = 0.5 * random.nextGaussian();
        gustEast = 0.5 * random.nextGaussian();
        faster = 0.5 * random.nextGaussian();
      }
      time[k] = k / 5.0;
      double heading = 0.3 + turn * k / size;
      double airspeed = 30 + faster;
      double north = airspeed * FastMath.cos(heading) + NORTH + gustNorth;
      double east = airspeed * FastMath.sin(heading) + EAST + gustEast;
      values.get(Channel.GROUND_SPEED)[k] = FastMath.hypot(north, east);
      values.get(Channel.TRACK)[k] = FastMath.atan2(east, north);
      values.get(Channel.AIRSPEED)[k] = air ? airspeed : Double.NaN;
      values.get(Channel.HEADING)[k] = air ? heading : Double.NaN;
    }
    return new Recording(time, values);
  }

  private static void isNearBy(WindEstimate found) {
    assertEquals(NORTH, found.north(), 4 * found.deviation());
    assertEquals(EAST, found.east(), 4 * found.deviation());
    assertTrue(found.deviation() < 1.5, "deviation " + found.deviation());
  }

  @Test
  void airspeedAndHeadingGiveTheWindOnOneTrackToo() {
    for (int seed = 0; seed < 10; seed++) {
      WindEstimate found = WindEstimate.of(flight(0, true, seed));
      assertEquals(WindEstimate.Source.AIRSPEED, found.source());
      isNearBy(found);
      // a stretch holds one gust, of 0.5 m/s; the wind elsewhere is off by 1 kt, 0.514 m/s
      assertEquals(FastMath.hypot(0.5, 0.514), found.deviation(), 0.2);
    }
  }

  @Test
  void groundSpeedsOnSeveralTracksGiveTheWind() {
    for (int seed = 0; seed < 10; seed++) {
      WindEstimate found = WindEstimate.of(flight(2 * FastMath.PI, false, seed));
      assertEquals(WindEstimate.Source.TRACKS, found.source());
      isNearBy(found);
    }
  }

  @Test
  void stretchesAtAnotherAirspeedAreLeftOut() {
    Recording steady = flight(3 * FastMath.PI, false, 3);
    double[] speed = Rewritten.values(steady, Channel.GROUND_SPEED);
    for (int k = 750; k < speed.length; k++) {
      speed[k] *= 0.6;
    }
    isNearBy(WindEstimate.of(Rewritten.with(steady, Channel.GROUND_SPEED, speed)));
  }

  @Test
  void groundSpeedsOnOneTrackSayNothingOfTheWind() {
    WindEstimate found = WindEstimate.of(flight(0.5, false, 1));
    assertEquals(WindEstimate.Source.UNKNOWN, found.source());
    // ten knots, 1852 m / 3600 s each by definition
    assertEquals(10 * 1852 / 3600.0, found.deviation(), 1e-12);
    assertEquals(0, found.wind().speed());
  }

  @Test
  void theWindComesFromWhereItDoesNotGo() {
    // 5 m/s toward 143.13 degrees come from 323.13 degrees: a triangle of sides 3, 4 and 5
    WindEstimate wind = new WindEstimate(NORTH, EAST, 1, WindEstimate.Source.TRACKS);
    assertEquals(5, wind.wind().speed(), 1e-12);
    assertEquals(323.13, FastMath.toDegrees(wind.wind().directionFrom()), 0.01);
  }

  /**
   * Readings five times a second, ten seconds at each velocity: over the ground to the north and
   * east and, if they are given, through the air.
   */
  private static Recording legs(double[]... velocities) {
    int size = 50 * velocities.length + 1;
    double[] time = new double[size];
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    for (Channel channel : Channel.values()) {
      values.put(channel, new double[size]);
    }
    for (int k = 0; k < size; k++) {
      time[k] = k / 5.0;
      double[] at = velocities[Math.min(k / 50, velocities.length - 1)];
      boolean air = at.length > 2;
      values.get(Channel.GROUND_SPEED)[k] = FastMath.hypot(at[0], at[1]);
      values.get(Channel.TRACK)[k] = FastMath.atan2(at[1], at[0]);
      values.get(Channel.AIRSPEED)[k] = air ? FastMath.hypot(at[2], at[3]) : Double.NaN;
      values.get(Channel.HEADING)[k] = air ? FastMath.atan2(at[3], at[2]) : Double.NaN;
    }
    return new Recording(time, values);
  }

  /** What the wind elsewhere may be off, 1 kt. */
  private static final double ELSEWHERE = 1852 / 3600.0;

  /**
   * By hand: winds (1, 0) and (3, 4) have the mean (2, 2), from which each is off by 5 in the sum
   * of squares; 10 over twice one free stretch is 5, of which the mean of two adds a half. At 5 m/s
   * gauges tell nothing.
   */
  @Test
  void twoStretchesGiveTheMeanAndWhatTheyDifferBy() {
    WindEstimate found =
        WindEstimate.of(
            legs(
                new double[] {31, 0, 30, 0},
                new double[] {9, 9, 5, 0},
                new double[] {3, 34, 0, 30}));
    assertEquals(WindEstimate.Source.AIRSPEED, found.source());
    assertEquals(2, found.north(), 1e-9);
    assertEquals(2, found.east(), 1e-9);
    assertEquals(FastMath.hypot(FastMath.sqrt(7.5), ELSEWHERE), found.deviation(), 1e-9);
  }

  /** Stretches on a circle about the wind, between two tracks through the air, off by turns. */
  private static Recording around(int count, double from, double to, double off) {
    double[][] legs = new double[count][];
    for (int i = 0; i < count; i++) {
      double direction = FastMath.toRadians(from + (to - from) * i / count);
      double airspeed = 30 + (i % 2 == 0 ? off : -off);
      legs[i] =
          new double[] {
            NORTH + airspeed * FastMath.cos(direction), EAST + airspeed * FastMath.sin(direction)
          };
    }
    return legs(legs);
  }

  /**
   * By hand: eight speeds by turns 2 m/s more and less leave the circle where it is, for a wave of
   * four periods is orthogonal to the first harmonics. The squares are 32; three numbers are fitted
   * and two more taken off, so the variance is 32 / 3, and the centre's is a quarter of it.
   */
  @Test
  void eightStretchesGiveTheCircleAndWhatTheyDifferBy() {
    WindEstimate found = WindEstimate.of(around(8, 0, 360, 2));
    assertEquals(WindEstimate.Source.TRACKS, found.source());
    assertEquals(NORTH, found.north(), 1e-6);
    assertEquals(EAST, found.east(), 1e-6);
    assertEquals(
        FastMath.hypot(FastMath.sqrt(32.0 / 3 * 1.25), ELSEWHERE), found.deviation(), 1e-6);
    assertEquals(ELSEWHERE, WindEstimate.of(around(8, 0, 360, 0)).deviation(), 1e-6);
  }

  /** Eight of a circle, half of them before and half of them after ten seconds without any. */
  @Test
  void aStretchWithoutAGroundSpeedIsPassedOver() {
    double[][] legs = new double[9][];
    for (int i = 0; i < legs.length; i++) {
      double direction = FastMath.toRadians(45 * (i < 4 ? i : i - 1));
      legs[i] =
          new double[] {
            NORTH + 30 * FastMath.cos(direction),
            i == 4 ? Double.NaN : EAST + 30 * FastMath.sin(direction)
          };
    }
    WindEstimate found = WindEstimate.of(legs(legs));
    assertEquals(WindEstimate.Source.TRACKS, found.source());
    assertEquals(NORTH, found.north(), 1e-6);
    assertEquals(EAST, found.east(), 1e-6);
  }

  /** Whatever the bearing: a circle with most of it open tells nothing, however exact. */
  @Test
  void tracksOnOneSideSayNothingOfTheWind() {
    for (int middle = 0; middle < 360; middle += 45) {
      WindEstimate found = WindEstimate.of(around(10, middle - 60, middle + 60, 0));
      assertEquals(WindEstimate.Source.UNKNOWN, found.source(), "about " + middle);
    }
  }
}
