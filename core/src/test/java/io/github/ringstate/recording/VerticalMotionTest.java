package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VerticalMotionTest {

  private static final Noise NOISE = new Noise(2, 1.2, 0.8, 0.3, 1.5, 40);

  /** Readings of all three channels at uneven times, a fifth of them missing. */
  private static Recording uneven(int size, SplittableRandom random) {
    double[] time = new double[size];
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    for (Channel channel :
        Set.of(Channel.HEIGHT, Channel.PRESSURE_ALTITUDE, Channel.VERTICAL_SPEED)) {
      values.put(channel, new double[size]);
    }
    for (int k = 0; k < size; k++) {
      time[k] = k == 0 ? 3 : time[k - 1] + random.nextDouble(0.1, 1.1);
      double height = 300 - 4 * time[k];
      put(values.get(Channel.HEIGHT), k, height + random.nextGaussian(), random);
      put(values.get(Channel.PRESSURE_ALTITUDE), k, height + 85 + random.nextGaussian(), random);
      put(values.get(Channel.VERTICAL_SPEED), k, -4 + 0.3 * random.nextGaussian(), random);
    }
    values.get(Channel.HEIGHT)[0] = 290;
    return new Recording(time, values);
  }

  private static void put(double[] values, int k, double value, SplittableRandom random) {
    values[k] = random.nextDouble() < 0.2 ? Double.NaN : value;
  }

  /** The matrix that takes height, speed, acceleration and two slow errors over a time. */
  private static RealMatrix transition(double dt, boolean stepped) {
    return MatrixUtils.createRealMatrix(
        new double[][] {
          {1, dt, dt * dt / 2, 0, 0},
          {0, 1, dt, 0, 0},
          {0, 0, 1, 0, 0},
          {0, 0, 0, stepped ? 1 : FastMath.exp(-dt / 40), 0},
          {0, 0, 0, 0, 1}
        });
  }

  /** What white noise of jerk and of the slow errors adds: its integral, by Gauss's rule. */
  private static RealMatrix added(double dt, boolean stepped) {
    GaussIntegrator rule = new GaussIntegratorFactory().legendre(12, 0, dt);
    double drift = 2 * 1.5 * 1.5 / 40;
    RealMatrix intensity =
        MatrixUtils.createRealDiagonalMatrix(new double[] {0, 0, 2, drift, drift});
    RealMatrix sum = MatrixUtils.createRealMatrix(5, 5);
    for (int i = 0; i < rule.getNumberOfPoints(); i++) {
      RealMatrix f = transition(rule.getPoint(i), stepped);
      sum =
          sum.add(f.multiply(intensity).multiply(f.transpose()).scalarMultiply(rule.getWeight(i)));
    }
    return sum;
  }

  /** Adds (row x - value)^2 / variance to a quadratic form, of which half the gradient is kept. */
  private static void require(
      RealMatrix normal, RealVector right, int at, double[] row, double value, double variance) {
    for (int i = 0; i < row.length; i++) {
      right.addToEntry(at + i, row[i] * value / variance);
      for (int j = 0; j < row.length; j++) {
        normal.addToEntry(at + i, at + j, row[i] * row[j] / variance);
      }
    }
  }

  /** A level that steps by 5 km is as free from there on as if nothing were known of it. */
  @ParameterizedTest
  @CsvSource({"0, 99", "5000, 6", "-5000, 9"})
  void theSmootherIsTheLeastSquaresSolutionOverAllReadingsAtOnce(double step, int stepAt) {
    // second method: the normal equations of all states together, solved by Hipparchus
    int size = 14;
    Recording recording = uneven(size, new SplittableRandom(7));
    double[] heights = Rewritten.values(recording, Channel.HEIGHT);
    for (int k = stepAt; k < size; k++) {
      heights[k] += step;
    }
    recording = Rewritten.with(recording, Channel.HEIGHT, heights);
    RealMatrix normal = MatrixUtils.createRealMatrix(5 * size, 5 * size);
    RealVector right = MatrixUtils.createRealVector(new double[5 * size]);
    double[] prior = {1e3, 30, 10, 1.5, FastMath.hypot(2000, 1.5)};
    for (int i = 0; i < 5; i++) {
      double[] row = new double[5];
      row[i] = 1;
      require(normal, right, 0, row, i == 0 ? 290 : 0, prior[i] * prior[i]);
    }
    for (int k = 0; k < size; k++) {
      double[][] rows = {{1, 0, 0, 1, 0}, {1, 0, 0, 0, 1}, {0, 1, 0, 0, 0}};
      double[] deviation = {1.2, 0.8, 0.3};
      Channel[] channels = {Channel.HEIGHT, Channel.PRESSURE_ALTITUDE, Channel.VERTICAL_SPEED};
      for (int c = 0; c < 3; c++) {
        double value = recording.value(channels[c], k);
        if (!Double.isNaN(value)) {
          require(normal, right, 5 * k, rows[c], value, deviation[c] * deviation[c]);
        }
      }
      if (k + 1 < size) {
        double dt = recording.time(k + 1) - recording.time(k);
        boolean stepped = k + 1 >= stepAt;
        RealMatrix added = added(dt, stepped);
        added.addToEntry(3, 3, k + 1 == stepAt ? step * step : 0);
        RealMatrix weight = MatrixUtils.inverse(added);
        RealMatrix both = MatrixUtils.createRealMatrix(5, 10);
        both.setSubMatrix(transition(dt, stepped).scalarMultiply(-1).getData(), 0, 0);
        both.setSubMatrix(MatrixUtils.createRealIdentityMatrix(5).getData(), 0, 5);
        RealMatrix block = both.transpose().multiply(weight).multiply(both);
        for (int i = 0; i < 10; i++) {
          for (int j = 0; j < 10; j++) {
            normal.addToEntry(5 * k + i, 5 * k + j, block.getEntry(i, j));
          }
        }
      }
    }
    RealMatrix covariance = new CholeskyDecomposition(normal, 1e-9, 0).getSolver().getInverse();
    RealVector solution = covariance.operate(right);
    VerticalMotion motion = VerticalMotion.of(recording, NOISE);
    assertEquals(Map.of(), motion.outliers());
    assertEquals(step == 0 ? Map.of() : Map.of(Channel.HEIGHT, Set.of(stepAt)), motion.steps());
    // the normal equations hold 1e-6 of a wide first guess beside 1e6 and more of a short step
    double tolerance = 1e-5;
    for (int k = 0; k < size; k++) {
      assertEquals(solution.getEntry(5 * k), motion.height(k), tolerance);
      assertEquals(solution.getEntry(5 * k + 1), motion.verticalSpeed(k), tolerance);
      assertEquals(solution.getEntry(5 * k + 2), motion.acceleration(k), tolerance);
      assertEquals(
          FastMath.sqrt(covariance.getEntry(5 * k, 5 * k)), motion.heightDeviation(k), tolerance);
      assertEquals(
          FastMath.sqrt(covariance.getEntry(5 * k + 1, 5 * k + 1)),
          motion.verticalSpeedDeviation(k),
          tolerance);
      double difference =
          covariance.getEntry(5 * k, 5 * k)
              + covariance.getEntry(5 * size - 5, 5 * size - 5)
              - 2 * covariance.getEntry(5 * k, 5 * size - 5);
      assertEquals(
          FastMath.sqrt(Math.max(0, difference)),
          motion.heightDifferenceDeviation(k, size - 1),
          tolerance);
    }
  }

  /** A flight that jerks as the model says, and what instruments make of it. */
  @SuppressWarnings("ArrayRecordComponent") // read at once, in this test alone
  private record Flight(double[] height, double[] speed, Recording recording) {

    static Flight random(int size, double dt, SplittableRandom random) {
      double[] time = IntStream.range(0, size).mapToDouble(k -> k * dt).toArray();
      double[] h = new double[size];
      double[] v = new double[size];
      double a = 0;
      double drift = NOISE.drift() * random.nextGaussian();
      double[] gps = new double[size];
      double[] vsi = new double[size];
      h[0] = 200;
      int fine = 50;
      for (int k = 0; k < size; k++) {
        if (k > 0) {
          h[k] = h[k - 1];
          v[k] = v[k - 1];
          for (int i = 0; i < fine; i++) {
            double step = dt / fine;
            h[k] += v[k] * step + a * step * step / 2;
            v[k] += a * step;
            a += FastMath.sqrt(NOISE.jerk() * step) * random.nextGaussian();
          }
          double kept = FastMath.exp(-dt / NOISE.driftTime());
          drift =
              kept * drift + FastMath.sqrt(1 - kept * kept) * NOISE.drift() * random.nextGaussian();
        }
        gps[k] = h[k] + drift + NOISE.height() * random.nextGaussian();
        vsi[k] = v[k] + NOISE.verticalSpeed() * random.nextGaussian();
      }
      return new Flight(
          h, v, new Recording(time, Map.of(Channel.HEIGHT, gps, Channel.VERTICAL_SPEED, vsi)));
    }
  }

  @Test
  void theTruthLiesAsFarOffAsTheDeviationsSay() {
    SplittableRandom random = new SplittableRandom(11);
    int runs = 200;
    double speed = 0;
    double lost = 0;
    for (int run = 0; run < runs; run++) {
      Flight flight = Flight.random(60, 0.5, random);
      VerticalMotion motion = VerticalMotion.of(flight.recording(), NOISE);
      double off =
          (motion.verticalSpeed(30) - flight.speed()[30]) / motion.verticalSpeedDeviation(30);
      double loss =
          motion.height(20) - motion.height(40) - flight.height()[20] + flight.height()[40];
      loss /= motion.heightDifferenceDeviation(20, 40);
      speed += off * off / runs;
      lost += loss * loss / runs;
    }
    // chi-square with 200 degrees of freedom over 200: 0.77 to 1.26 in 99 cases of a hundred
    assertEquals(1.015, speed, 0.245);
    assertEquals(1.015, lost, 0.245);
  }

  @Test
  void noiseIsEstimatedFromTheReadingsThemselves() {
    SplittableRandom random = new SplittableRandom(12);
    double[] logs = new double[3];
    int runs = 8;
    for (int run = 0; run < runs; run++) {
      Noise found = NoiseEstimate.of(Flight.random(400, 0.2, random).recording(), 1.5, 40);
      logs[0] += FastMath.log(found.jerk() / NOISE.jerk()) / runs;
      logs[1] += FastMath.log(found.height() / NOISE.height()) / runs;
      logs[2] += FastMath.log(found.verticalSpeed() / NOISE.verticalSpeed()) / runs;
    }
    assertEquals(0, logs[0], 0.35, "jerk");
    assertEquals(0, logs[1], 0.05, "height");
    assertEquals(0, logs[2], 0.05, "vertical speed");
  }

  /** 1,199 readings of which the first 800 are of level flight: the last 800 tell of the motion. */
  @Test
  void noiseIsThatOfTheLivelyPartWhereverItIs() {
    SplittableRandom random = new SplittableRandom(8);
    Recording lively = Flight.random(1199, 0.2, random).recording();
    double[] height = Rewritten.values(lively, Channel.HEIGHT);
    double[] speed = Rewritten.values(lively, Channel.VERTICAL_SPEED);
    for (int k = 0; k < 800; k++) {
      height[k] = height[800] + NOISE.height() * random.nextGaussian();
      speed[k] = NOISE.verticalSpeed() * random.nextGaussian();
    }
    Recording whole =
        Rewritten.with(
            Rewritten.with(lively, Channel.HEIGHT, height), Channel.VERTICAL_SPEED, speed);
    assertEquals(
        NoiseEstimate.of(whole.part(399, 1199), 1.5, 40), NoiseEstimate.of(whole, 1.5, 40));
  }

  @Test
  void aStepOfTheReceiversHeightIsNoHeightLost() {
    Flight flight = Flight.random(100, 0.2, new SplittableRandom(5));
    double[] height = Rewritten.values(flight.recording(), Channel.HEIGHT);
    for (int k = 60; k < height.length; k++) {
      height[k] -= 25;
    }
    Recording stepped = Rewritten.with(flight.recording(), Channel.HEIGHT, height);
    VerticalMotion motion = VerticalMotion.of(stepped, NOISE);
    assertEquals(Set.of(60), motion.steps().get(Channel.HEIGHT));
    VerticalMotion plain = VerticalMotion.of(flight.recording(), NOISE);
    double lost = motion.height(40) - motion.height(80);
    double deviation = motion.heightDifferenceDeviation(40, 80);
    assertTrue(deviation < 4, "it is known to some metres: " + deviation);
    assertEquals(plain.height(40) - plain.height(80), lost, 2 * deviation);
  }

  /** Level flight, and a receiver whose height stays where it stepped to. */
  @ParameterizedTest
  @ValueSource(doubles = {10, 25, -60, 400, -2000})
  void aLevelThatSteppedAndStaysIsNoClimb(double step) {
    SplittableRandom random = new SplittableRandom(3);
    double[] time = IntStream.range(0, 400).mapToDouble(k -> k / 5.0).toArray();
    double[] height = new double[time.length];
    for (int k = 0; k < time.length; k++) {
      height[k] = (k < 200 ? 200 : 200 + step) + random.nextGaussian();
    }
    VerticalMotion motion =
        VerticalMotion.of(
            new Recording(time, Map.of(Channel.HEIGHT, height)), Noise.of(0.3, 1, 1, 0.2));
    assertEquals(Map.of(Channel.HEIGHT, Set.of(200)), motion.steps());
    assertEquals(step, motion.levelChange(Channel.HEIGHT, 200), 3);
    assertEquals(0, motion.levelChange(Channel.HEIGHT, 199), 0.1);
    assertThrows(
        IllegalArgumentException.class, () -> motion.levelChange(Channel.VERTICAL_SPEED, 200));
    assertEquals(0, motion.verticalSpeed(230), 3 * motion.verticalSpeedDeviation(230));
    assertEquals(
        0, motion.height(300) - motion.height(190), 3 * motion.heightDifferenceDeviation(190, 300));
  }

  @Test
  void aReadingFarOffIsLeftOut() {
    Flight flight = Flight.random(100, 0.2, new SplittableRandom(6));
    double[] height = Rewritten.values(flight.recording(), Channel.HEIGHT);
    double[] without = height.clone();
    height[50] += 400;
    without[50] = Double.NaN;
    VerticalMotion motion =
        VerticalMotion.of(Rewritten.with(flight.recording(), Channel.HEIGHT, height), NOISE);
    assertEquals(Map.of(Channel.HEIGHT, Set.of(50)), motion.outliers());
    VerticalMotion reference =
        VerticalMotion.of(Rewritten.with(flight.recording(), Channel.HEIGHT, without), NOISE);
    for (int k = 0; k < height.length; k++) {
      assertEquals(reference.height(k), motion.height(k));
    }
  }

  /** A motion that does not jerk, so that what is read by turns above and below it goes through. */
  private static VerticalMotion wavers(double height, double altitude, double speed) {
    int size = 60;
    double[] time = IntStream.range(0, size).mapToDouble(k -> k / 2.0).toArray();
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    values.put(Channel.HEIGHT, turns(size, 20_000, height));
    values.put(Channel.PRESSURE_ALTITUDE, turns(size, 19_400, altitude));
    values.put(Channel.VERTICAL_SPEED, turns(size, 0, speed));
    return VerticalMotion.of(new Recording(time, values), new Noise(1e-9, 0.5, 2, 0.1, 0, 60));
  }

  private static double[] turns(int size, double level, double off) {
    return IntStream.range(0, size).mapToDouble(k -> level + (k % 2 == 0 ? off : -off)).toArray();
  }

  /** By hand, of readings 2, 3 and 1 standard deviations off; the level is known to a tenth. */
  @Test
  void theScaleIsTheRootOfTheMeanSquareOfWhatReadingsAreOff() {
    VerticalMotion motion = wavers(2 * 0.5, 3 * 2, 0.1);
    for (int to : new int[] {20, 21, 40}) {
      assertEquals(FastMath.sqrt((4 + 9 + 1) / 3.0), motion.scale(20, to), 0.1);
    }
    assertEquals(1, wavers(0.1, 0.1, 0.01).scale(20, 40), "no less than the noise");
  }

  /**
   * By hand: before anything is known a vertical speed is 30 m/s off, the first height by 1 km and
   * its slow error, and no reading counts worse than five deviations off.
   */
  @ParameterizedTest
  @ValueSource(doubles = {30, -60, 3000})
  void theLikelihoodIsThatOfNormalDeviates(double speed) {
    Recording one =
        new Recording(
            new double[] {0},
            Map.of(
                Channel.HEIGHT, new double[] {500}, Channel.VERTICAL_SPEED, new double[] {speed}));
    double ofHeight = 1e6 + 1.5 * 1.5 + 40 * 40;
    double ofSpeed = 900 + 16;
    double off = Math.min(speed * speed / ofSpeed, 25);
    assertEquals(
        -(FastMath.log(2 * FastMath.PI * ofHeight) + FastMath.log(2 * FastMath.PI * ofSpeed) + off)
            / 2,
        VerticalMotion.logLikelihood(one, new Noise(1, 40, 1, 4, 1.5, 60)),
        1e-9);
  }

  /** However high it is, for the first height is what the others are counted from. */
  @Test
  void heightsThatStayAreNoSurprise() {
    VerticalMotion motion = wavers(0.1, 0.1, 0.01);
    assertEquals(Map.of(), motion.outliers());
    assertEquals(Map.of(), motion.steps());
    assertEquals(20_000, motion.height(0), 0.2);
  }

  @Test
  void aRecordingWithoutHeightIsRefused() {
    Recording speeds =
        new Recording(new double[] {0, 1}, Map.of(Channel.VERTICAL_SPEED, new double[] {1, 2}));
    assertThrows(IllegalArgumentException.class, () -> VerticalMotion.of(speeds, NOISE));
  }

  @Test
  void aRecordingKeepsWhatItWasGiven() {
    double[] time = {0, 1};
    double[] height = {5, 6};
    Recording recording = new Recording(time, Map.of(Channel.HEIGHT, height));
    Arrays.fill(time, 9);
    Arrays.fill(height, 9);
    assertEquals(1, recording.time(1));
    assertEquals(6, recording.value(Channel.HEIGHT, 1));
    assertEquals(1, recording.indexAt(0.5));
    assertTrue(Double.isNaN(recording.value(Channel.BANK, 0)));
  }
}
