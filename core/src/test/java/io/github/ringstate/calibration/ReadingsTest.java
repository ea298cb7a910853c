package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Estimate;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Noise;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.Verdict;
import io.github.ringstate.recording.VerticalMotion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/**
 * Readings of a descent that was made up: once a second from 100 s to 139 s, at 3 m/s downward. One
 * height is far off, from 121 s on the heights are 40 m higher, and one attitude is missing. The
 * onset is at 120.5 s and the arrest at 126.3 s, so that the readings from 113 s to 127 s count.
 */
class ReadingsTest {

  private static final int SIZE = 40;

  /** The first reading that counts, and the first behind them. */
  private static final int FROM = 13;

  private static final int TO = 28;

  /** The height far off, the first of those that are higher, and the attitude that is missing. */
  private static final int OUTLIER = 15;

  private static final int STEP = 21;
  private static final int MISSING = 18;
  private static final double TRACK = 0.5;

  /** Of the two receivers one is worse than a metre, and the vertical speed better than 0.2 m/s. */
  private static final Noise NOISE = new Noise(1, 1.5, 0.8, 0.1, 2, 30);

  private static double[] each(IntToDoubleFunction value) {
    return IntStream.range(0, SIZE).mapToDouble(value).toArray();
  }

  private static double height(int k) {
    return 1000 - 3 * k + (k == OUTLIER ? 90 : 0) + (k >= STEP ? 40 : 0);
  }

  private static Map<Channel, double[]> channels() {
    Map<Channel, double[]> all = new EnumMap<>(Channel.class);
    all.put(Channel.HEIGHT, each(ReadingsTest::height));
    all.put(Channel.PRESSURE_ALTITUDE, each(k -> 950 - 3 * k));
    all.put(Channel.VERTICAL_SPEED, each(k -> -3));
    all.put(Channel.GROUND_SPEED, each(k -> 10));
    // the way turns to the right at the onset
    all.put(Channel.TRACK, each(k -> k <= 20 ? TRACK : TRACK + 0.3));
    all.put(Channel.PITCH, each(k -> k == MISSING ? Double.NaN : 0.01 * k));
    all.put(Channel.BANK, each(k -> -0.02 * k));
    all.put(Channel.COLLECTIVE, each(k -> 0.4 + 0.001 * k));
    return all;
  }

  private static Demonstration demonstration(double clock, Map<Channel, double[]> channels) {
    Recording recording = new Recording(each(k -> clock + k), channels);
    Estimate none = new Estimate(0, 0);
    FoundEncounter found =
        new FoundEncounter(
            clock,
            new Estimate(clock + 20.5, 0.1),
            939,
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Estimate(clock + 26.3, 0.1)),
            none,
            none,
            Verdict.RING_STATE);
    EntryKind entry = EntryKind.SETTLING;
    return new Demonstration(
        "made up",
        VerticalMotion.of(recording, NOISE),
        found,
        Flights.encounter(Flights.CRAFT),
        entry,
        entry.numbers(),
        1,
        Technique.FORWARD);
  }

  private static Readings readings(boolean heightsToTheEnd) {
    return new Readings(demonstration(100, channels()), heightsToTheEnd);
  }

  private static List<Series> repeated(Object... seriesAndCounts) {
    List<Series> all = new ArrayList<>();
    for (int i = 0; i < seriesAndCounts.length; i += 2) {
      for (int k = 0; k < (int) seriesAndCounts[i + 1]; k++) {
        all.add((Series) seriesAndCounts[i]);
      }
    }
    return all;
  }

  /** 8 s before the onset to 1.5 s after the arrest; what is far off or missing does not count. */
  @Test
  void theReadingsRunFromBeforeTheOnsetToShortlyAfterTheArrest() {
    Demonstration made = demonstration(100, channels());
    assertEquals(new TreeSet<>(List.of(OUTLIER)), made.motion().outliers().get(Channel.HEIGHT));
    assertEquals(new TreeSet<>(List.of(STEP)), made.motion().steps().get(Channel.HEIGHT));
    Readings readings = readings(true);
    assertArrayEquals(
        IntStream.range(FROM, TO).mapToDouble(k -> 100 + k).toArray(), readings.times());
    List<Series> expected =
        repeated(
            Series.HEIGHT, 14,
            Series.PRESSURE_ALTITUDE, 15,
            Series.VERTICAL_SPEED, 15,
            Series.ALONG, 15,
            Series.ACROSS, 15,
            Series.PITCH, 14,
            Series.BANK, 15,
            Series.LEVER, 15);
    assertEquals(expected, List.of(readings.series()));
    assertEquals(expected.size(), readings.size());
  }

  @Test
  void heightsAndVerticalSpeedsMayEndAtTheOnset() {
    List<Series> expected =
        repeated(
            Series.HEIGHT, 7,
            Series.PRESSURE_ALTITUDE, 8,
            Series.VERTICAL_SPEED, 8,
            Series.ALONG, 15,
            Series.ACROSS, 15,
            Series.PITCH, 14,
            Series.BANK, 15,
            Series.LEVER, 15);
    assertEquals(expected, List.of(readings(false).series()));
  }

  /** Of {@link Series}: a metre and 0.2 m/s at least. */
  @Test
  void theDeviationsAreThoseOfTheInstrumentsButNotTooSmall() {
    Map<Series, Double> expected = new EnumMap<>(Series.class);
    expected.put(Series.HEIGHT, 1.5);
    expected.put(Series.PRESSURE_ALTITUDE, 1.0);
    expected.put(Series.VERTICAL_SPEED, 0.2);
    expected.put(Series.ALONG, 0.1);
    expected.put(Series.ACROSS, 0.1);
    expected.put(Series.PITCH, FastMath.toRadians(0.3));
    expected.put(Series.BANK, FastMath.toRadians(0.3));
    expected.put(Series.LEVER, 0.005);
    assertEquals(expected, readings(true).deviations());
  }

  /** What was read at the places that count, series after series. */
  private static double[] read(Series series) {
    return Arrays.stream(places(series)).mapToDouble(k -> read(series, k)).toArray();
  }

  private static double read(Series series, int k) {
    double turned = k <= 20 ? 0 : 0.3;
    return switch (series) {
      case HEIGHT -> height(k);
      case PRESSURE_ALTITUDE -> 950 - 3 * k;
      case VERTICAL_SPEED -> -3;
      case ALONG -> 10 * FastMath.cos(turned);
      case ACROSS -> 10 * FastMath.sin(turned);
      case PITCH -> 0.01 * k;
      case BANK -> -0.02 * k;
      case LEVER -> 0.4 + 0.001 * k;
    };
  }

  private static int[] places(Series series) {
    return IntStream.range(FROM, TO)
        .filter(k -> !(series == Series.HEIGHT && k == OUTLIER))
        .filter(k -> !(series == Series.PITCH && k == MISSING))
        .toArray();
  }

  /**
   * By hand: independent errors on the diagonal; of heights a slow error of 2 m that fades within
   * 30 s, a level that is not known to 1,000 m and steps not to 100 m; mountings of attitudes off
   * by 1 deg, the rigging of the lever by 2 per cent.
   */
  private static RealMatrix covariance(Series series, double deviation) {
    int[] at = places(series);
    RealMatrix covariance = MatrixUtils.createRealMatrix(at.length, at.length);
    double mounting = FastMath.toRadians(1);
    for (int i = 0; i < at.length; i++) {
      for (int j = 0; j < at.length; j++) {
        double shared = i == j ? deviation * deviation : 0;
        boolean bothBehind = at[i] >= STEP && at[j] >= STEP;
        double slow = 4 * FastMath.exp(-Math.abs(at[i] - at[j]) / 30.0);
        shared +=
            switch (series) {
              case HEIGHT -> slow + 1e6 + (bothBehind ? 1e4 : 0);
              case PRESSURE_ALTITUDE -> slow + 1e6;
              case PITCH, BANK -> mounting * mounting;
              case LEVER -> 0.02 * 0.02;
              case VERTICAL_SPEED, ALONG, ACROSS -> 0;
            };
        covariance.setEntry(i, j, shared);
      }
    }
    return covariance;
  }

  /** Second way: the root of the covariance by Hipparchus. */
  @Test
  void residualsAreWhatWasReadLessWhatWasFlownFreeOfWhatTheyShare() {
    Readings readings = readings(true);
    History history = Encounter.of(Flights.CRAFT).withDelay(2).record(Simulator.fast()).history();
    FlownTimes flown = new FlownTimes(history, Flights.CRAFT, 110, readings.times());
    double[] plain = readings.residuals(flown, Map.of());
    Map<Series, Double> deviations = new EnumMap<>(readings.deviations());
    deviations.put(Series.BANK, 0.07);
    double[] white = readings.residuals(flown, readings.whitenings(deviations));
    int from = 0;
    for (Series series : Series.values()) {
      double[] read = read(series);
      int[] at = places(series);
      double[] missed = new double[read.length];
      for (int i = 0; i < read.length; i++) {
        missed[i] = read[i] - flown.value(series, at[i] - FROM);
      }
      int to = from + read.length;
      assertArrayEquals(missed, Arrays.copyOfRange(plain, from, to), 1e-12, series.name());
      RealMatrix root =
          new CholeskyDecomposition(covariance(series, deviations.get(series)), 1e-6, 0).getL();
      DecompositionSolver solver = new LUDecomposition(root).getSolver();
      double[] expected = solver.solve(MatrixUtils.createRealVector(missed)).toArray();
      assertArrayEquals(expected, Arrays.copyOfRange(white, from, to), 1e-7, series.name());
      from = to;
    }
    assertEquals(white.length, from);
  }

  @Test
  void theSameReadingsAreTheSameWheneverTheyWereTaken() {
    Readings one = readings(true);
    assertTrue(one.isSameAs(new Readings(demonstration(5000, channels()), true)));
    Map<Channel, double[]> other = channels();
    other.get(Channel.BANK)[20] += 1e-9;
    assertFalse(one.isSameAs(new Readings(demonstration(100, other), true)));
    other = channels();
    other.remove(Channel.BANK);
    assertFalse(one.isSameAs(new Readings(demonstration(100, other), true)));
    Map<Channel, double[]> noAltitude = channels();
    noAltitude.put(Channel.HEIGHT, noAltitude.remove(Channel.PRESSURE_ALTITUDE));
    Map<Channel, double[]> noHeight = channels();
    noHeight.remove(Channel.HEIGHT);
    assertFalse(
        new Readings(demonstration(100, noAltitude), true)
            .isSameAs(new Readings(demonstration(100, noHeight), true)));
  }

  /** A channel of which nothing counts is no series. */
  @Test
  void aChannelThatSaysNothingGivesNoReadings() {
    Map<Channel, double[]> silent = channels();
    silent.put(Channel.BANK, each(k -> k < 5 ? 0.1 : Double.NaN));
    Readings readings = new Readings(demonstration(100, silent), true);
    assertFalse(List.of(readings.series()).contains(Series.BANK));
    assertFalse(readings.deviations().containsKey(Series.BANK));
  }

  private static double direction(Map<Channel, double[]> channels, Optional<Estimate> arrest) {
    Demonstration made = demonstration(100, channels);
    FoundEncounter found = made.found();
    return EntryDirection.of(made.recording(), Flights.with(found, found.movement(), arrest));
  }

  /**
   * By hand: 8 readings before the onset count, of which the first four go north and the others
   * half as fast east; where the craft is slower than 1.5 m/s, what follows up to the arrest counts
   * too, or as long after the onset as before.
   */
  @Test
  void theEntryComesOnTheWayOfTheSecondsBeforeTheOnset() {
    Map<Channel, double[]> turning = channels();
    turning.put(Channel.TRACK, each(k -> k < FROM ? 3 : k < 17 ? 0 : FastMath.PI / 2));
    turning.put(Channel.GROUND_SPEED, each(k -> k < 17 ? 4 : k < STEP ? 2 : 90));
    Optional<Estimate> arrest = Optional.of(new Estimate(126.3, 0));
    assertEquals(FastMath.atan2(4 * 2, 4 * 4), direction(turning, arrest), 1e-12);
    // one reading without a track, and one without a speed
    turning.get(Channel.TRACK)[14] = Double.NaN;
    turning.get(Channel.GROUND_SPEED)[18] = Double.NaN;
    assertEquals(FastMath.atan2(3 * 2, 3 * 4), direction(turning, arrest), 1e-12);
    Map<Channel, double[]> slow = channels();
    slow.put(Channel.TRACK, each(k -> k < STEP ? 0 : FastMath.PI / 2));
    // just fast enough, and not
    slow.put(Channel.GROUND_SPEED, each(k -> k < STEP ? 1.51 : k < 27 ? 7 : 20));
    assertEquals(0, direction(slow, arrest), 1e-12);
    slow.put(Channel.GROUND_SPEED, each(k -> k < STEP ? 1.49 : k < 27 ? 7 : 20));
    assertEquals(FastMath.atan2(6 * 7, 8 * 1.49), direction(slow, arrest), 1e-12);
    assertEquals(
        FastMath.atan2(6 * 7 + 2 * 20, 8 * 1.49), direction(slow, Optional.empty()), 1e-12);
  }
}
