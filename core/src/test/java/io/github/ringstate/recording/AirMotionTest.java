package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.RingBand;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Speeds through the disc on flights of which the velocity is known, worked out with vectors. */
class AirMotionTest {

  private static final double INDUCED = 8;
  private static final double GRAVITY = 9.80665; // standard, CGPM 1901
  private static final double TOLERANCE = 1e-9;

  /** A boundary whose margin is one of the speeds that it is asked for. */
  private record Speed(boolean isAxial) implements BoundaryCriterion {

    @Override
    public String name() {
      return "speed";
    }

    @Override
    public double margin(double edgewise, double axial) {
      return isAxial ? axial : edgewise;
    }

    @Override
    public List<RingBand> bands(double edgewise) {
      return List.of();
    }

    @Override
    public OptionalDouble reach() {
      return OptionalDouble.empty();
    }
  }

  /** Of time and height, and of places at which nothing should be asked. */
  private static final WindField WIND =
      (time, north, east, height, result) -> {
        result[0] = 1 + 0.02 * (time - 100) + north;
        result[1] = -2 + 0.01 * height + east;
        result[2] = 0.4;
      };

  /** Four readings a second, each exact in binary, from 100 s on. */
  private static double time(int k) {
    return 100 + k / 4.0;
  }

  private static RealVector vector(double... northEastUp) {
    return MatrixUtils.createRealVector(northEastUp);
  }

  /** Over the ground, with slopes that change all the time. */
  private static RealVector ground(int k) {
    return vector(3 + 0.2 * k - 0.01 * k * k, -2 + 0.03 * k * k, 0);
  }

  /** Twenty readings of a descent at a constant acceleration, without some velocities. */
  private static VerticalMotion descent(double acceleration, int... without) {
    int size = 20;
    double[] times = new double[size];
    double[] height = new double[size];
    double[] speed = new double[size];
    double[] track = new double[size];
    for (int k = 0; k < size; k++) {
      double since = k / 4.0;
      times[k] = time(k);
      height[k] = 200 - 3 * since + acceleration * since * since / 2;
      speed[k] = ground(k).getNorm();
      track[k] = FastMath.atan2(ground(k).getEntry(1), ground(k).getEntry(0));
    }
    for (int k : without) {
      speed[k] = Double.NaN;
    }
    Recording recording =
        new Recording(
            times,
            Map.of(Channel.HEIGHT, height, Channel.GROUND_SPEED, speed, Channel.TRACK, track));
    return VerticalMotion.of(recording, new Noise(1, 0.01, 0.01, 0.01, 0, 60));
  }

  private static RealVector air(VerticalMotion motion, int k) {
    double[] wind = new double[3];
    WIND.velocity(time(k), 0, 0, motion.height(k), wind);
    return ground(k).add(vector(0, 0, motion.verticalSpeed(k))).subtract(vector(wind));
  }

  /**
   * The axial speed is that along the thrust, and edgewise is what is left across it; the thrust is
   * what weight and acceleration ask for.
   */
  private record Asked(VerticalMotion motion, WindField wind, int k, double faster, double ahead) {

    void finds(RealVector air, RealVector acceleration) {
      AirMotion moved = new AirMotion(motion, wind, INDUCED);
      double up = Math.max(1, GRAVITY + motion.acceleration(k));
      RealVector thrust = acceleration.add(vector(0, 0, up)).unitVector();
      assertEquals(
          air.dotProduct(thrust) / INDUCED,
          moved.margin(new Speed(true), k, faster, ahead),
          TOLERANCE,
          "axial");
      assertEquals(
          air.subtract(air.projection(thrust)).getNorm() / INDUCED,
          moved.margin(new Speed(false), k, faster, ahead),
          TOLERANCE,
          "edgewise");
    }
  }

  private static Asked at(VerticalMotion motion, int k) {
    return new Asked(motion, WIND, k, 0, 0);
  }

  private static RealVector slope(int from, int to) {
    return ground(to).subtract(ground(from)).mapMultiply(4.0 / (to - from));
  }

  /** Three quarters of a second are three readings either way, as far as there are any. */
  @ParameterizedTest
  @CsvSource({"0, 0, 3", "1, 0, 4", "8, 5, 11", "12, 9, 15", "18, 15, 19", "19, 16, 19"})
  void theDiscStandsAcrossWhatWeightAndTheAccelerationAskFor(int k, int from, int to) {
    VerticalMotion motion = descent(-1.2);
    at(motion, k).finds(air(motion, k), slope(from, to));
  }

  @ParameterizedTest
  @CsvSource({"7, 4, 7", "12, 11, 15", "11, 11, 14"})
  void theAccelerationIsNotTakenOverWhatIsNotRecorded(int k, int from, int to) {
    VerticalMotion motion = descent(-1.2, 8, 10);
    at(motion, k).finds(air(motion, k), slope(from, to));
  }

  /** The velocities before and after it are not recorded. */
  @Test
  void oneVelocityAloneTellsNoAcceleration() {
    VerticalMotion motion = descent(-1.2, 8, 10);
    AirMotion moved = new AirMotion(motion, WIND, INDUCED);
    assertFalse(moved.known(8));
    assertTrue(moved.known(9));
    at(motion, 9).finds(air(motion, 9), vector(0, 0, 0));
  }

  /** At twice the acceleration of a free fall a thrust of 1 m/s2 upwards is left. */
  @Test
  void theRotorNeverPushesDown() {
    VerticalMotion motion = descent(-2 * GRAVITY);
    assertTrue(motion.acceleration(10) < -15);
    at(motion, 10).finds(air(motion, 10), slope(7, 13));
  }

  @ParameterizedTest
  @ValueSource(doubles = {2.5, -0.5})
  void whatIsAddedGoesUpAndAlongTheAirspeed(double ahead) {
    VerticalMotion motion = descent(0.5);
    RealVector air = air(motion, 6);
    RealVector along = vector(air.getEntry(0), air.getEntry(1), 0).unitVector();
    RealVector changed = air.add(along.mapMultiply(ahead)).add(vector(0, 0, -0.7));
    new Asked(motion, WIND, 6, -0.7, ahead).finds(changed, slope(3, 9));
  }

  /** Taken more off it than there is, an airspeed is none at all. */
  @Test
  void noAirspeedIsBelowZero() {
    VerticalMotion motion = descent(0.5);
    RealVector air = air(motion, 6);
    new Asked(motion, WIND, 6, 0, -100).finds(vector(0, 0, air.getEntry(2)), slope(3, 9));
  }

  /** Carried along by the wind, but for 0.05 m/s, it has no way ahead. */
  @Test
  void whatDriftsWithTheWindIsNoFasterAhead() {
    VerticalMotion motion = descent(0.5);
    RealVector drift = ground(6).subtract(vector(0, 0.05, 0));
    RealVector air = vector(0, 0.05, motion.verticalSpeed(6));
    new Asked(motion, new Wind(drift.getEntry(0), drift.getEntry(1)), 6, 0, 3)
        .finds(air, slope(3, 9));
  }

  @Test
  void theHorizontalAirspeedIsThatOverTheGroundLessTheWind() {
    VerticalMotion motion = descent(-1.2);
    AirMotion moved = new AirMotion(motion, WIND, INDUCED);
    for (int k : new int[] {0, 7, 19}) {
      RealVector air = air(motion, k);
      assertEquals(
          FastMath.hypot(air.getEntry(0), air.getEntry(1)), moved.horizontal(k), TOLERANCE);
    }
  }
}
