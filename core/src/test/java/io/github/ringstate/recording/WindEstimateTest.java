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
}
