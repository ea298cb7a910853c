package io.github.ringstate.calibration;

import io.github.ringstate.recording.Noise;
import io.github.ringstate.recording.Recording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.hipparchus.util.FastMath;

/**
 * The readings of a demonstration, from some seconds before the onset to shortly after the arrest,
 * and how far they may be off. Raw readings, for the errors of smoothed ones hang together. Those
 * of a height hang together too: its slow error and its unknown level are part of their covariance.
 */
final class Readings {

  /** To so long after the arrest, s. */
  private static final double AFTER = 1.5;

  /** Deviation of the level from which heights count, before and after each step of it, m. */
  private static final double LEVEL = 1000;

  private static final double STEP = 100;

  /** How far an attitude may be off all the time, rad, and the lever, share. Assumed. */
  private static final double MOUNTING = FastMath.toRadians(1);

  private static final double RIGGING = 0.02;

  /** The readings of one series: places among the times, and values. */
  @SuppressWarnings("ArrayRecordComponent") // of this class alone
  private record Row(Series series, int[] at, double[] value) {}

  private final Demonstration demonstration;
  private final double[] time;
  private final List<Row> rows = new ArrayList<>();
  private final int size;

  /**
   * Collects the readings.
   *
   * @param demonstration the demonstration
   * @param heightsToTheEnd whether heights and vertical speeds count after the onset too
   */
  Readings(Demonstration demonstration, boolean heightsToTheEnd) {
    this.demonstration = demonstration;
    Recording recording = demonstration.recording();
    double onset = demonstration.found().onsetTime().value();
    double arrest = demonstration.found().arrestTime().orElseThrow().value();
    int from = recording.indexAt(onset - EntryDirection.BEFORE);
    int to = recording.indexAt(arrest + AFTER);
    time = new double[to - from];
    for (int k = from; k < to; k++) {
      time[k - from] = recording.time(k);
    }
    double direction = EntryDirection.of(recording, demonstration.found());
    int all = 0;
    for (Series series : Series.values()) {
      if (recording.channels().contains(series.channel())) {
        int end = heightsToTheEnd || !series.isVertical() ? to : recording.indexAt(onset);
        Row row = row(series, from, end, direction);
        if (row.at().length > 0) {
          rows.add(row);
          all += row.at().length;
        }
      }
    }
    size = all;
  }

  private Row row(Series series, int from, int to, double direction) {
    Set<Integer> outliers =
        demonstration.motion().outliers().getOrDefault(series.channel(), new TreeSet<>());
    int[] at = new int[to - from];
    double[] value = new double[to - from];
    int count = 0;
    for (int k = from; k < to; k++) {
      double recorded = series.recorded(demonstration.recording(), k, direction);
      if (!Double.isNaN(recorded) && !outliers.contains(k)) {
        at[count] = k - from;
        value[count++] = recorded;
      }
    }
    return new Row(series, Arrays.copyOf(at, count), Arrays.copyOf(value, count));
  }

  /** Whether these are the readings of another demonstration too, at whatever time. */
  boolean isSameAs(Readings other) {
    if (rows.size() != other.rows.size()) {
      return false;
    }
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).series() != other.rows.get(i).series()
          || !Arrays.equals(rows.get(i).value(), other.rows.get(i).value())) {
        return false;
      }
    }
    return true;
  }

  /** How many readings there are. */
  int size() {
    return size;
  }

  /** The times, s on the clock of the recording. */
  double[] times() {
    return time;
  }

  /** The deviation of each series before any residual is known. */
  Map<Series, Double> deviations() {
    Map<Series, Double> deviations = new EnumMap<>(Series.class);
    rows.forEach(row -> deviations.put(row.series(), row.series().deviation(demonstration)));
    return deviations;
  }

  /** What makes independent errors of variance 1 of those of each series. */
  Map<Series, Whitening> whitenings(Map<Series, Double> deviations) {
    Map<Series, Whitening> whitenings = new EnumMap<>(Series.class);
    for (Row row : rows) {
      Double deviation = deviations.get(row.series());
      whitenings.put(
          row.series(), new Whitening(covariance(row, deviation == null ? 1 : deviation)));
    }
    return whitenings;
  }

  private double[][] covariance(Row row, double deviation) {
    Noise noise = demonstration.motion().noise();
    int count = row.at().length;
    SortedSet<Integer> steps =
        demonstration.motion().steps().getOrDefault(row.series().channel(), new TreeSet<>());
    int first = demonstration.recording().indexAt(time[0]);
    double[][] covariance = new double[count][count];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j <= i; j++) {
        double shared = i == j ? deviation * deviation : 0;
        if (row.series().isHeight()) {
          double apart = time[row.at()[i]] - time[row.at()[j]];
          shared += noise.drift() * noise.drift() * FastMath.exp(-apart / noise.driftTime());
          // a step before both readings moved both
          int before = steps.headSet(first + row.at()[j] + 1).size();
          shared += LEVEL * LEVEL + before * STEP * STEP;
        } else if (row.series() == Series.LEVER) {
          shared += RIGGING * RIGGING;
        } else if (row.series() == Series.PITCH || row.series() == Series.BANK) {
          shared += MOUNTING * MOUNTING;
        }
        covariance[i][j] = shared;
      }
    }
    return covariance;
  }

  /**
   * What is recorded less what was flown, whitened, series after series.
   *
   * @param flown the model's flight at each of {@link #times}
   * @param whitenings see {@link #whitenings}
   */
  double[] residuals(FlownTimes flown, Map<Series, Whitening> whitenings) {
    double[] residuals = new double[size];
    int from = 0;
    for (Row row : rows) {
      for (int i = 0; i < row.at().length; i++) {
        residuals[from + i] = row.value()[i] - flown.value(row.series(), row.at()[i]);
      }
      Whitening whitening = whitenings.get(row.series());
      if (whitening != null) {
        whitening.whiten(residuals, from);
      }
      from += row.at().length;
    }
    return residuals;
  }

  /** The series to which each residual belongs. */
  Series[] series() {
    Series[] all = new Series[size];
    int from = 0;
    for (Row row : rows) {
      Arrays.fill(all, from, from + row.at().length, row.series());
      from += row.at().length;
    }
    return all;
  }
}
