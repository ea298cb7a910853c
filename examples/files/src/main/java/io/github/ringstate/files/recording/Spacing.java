package io.github.ringstate.files.recording;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.hipparchus.util.FastMath;

/**
 * How far apart readings are. Where nothing was recorded for a time, that is said and not filled.
 * What was recorded less often than the rest is worked out between its readings, except heights and
 * vertical speed, of which the smoother takes each as it is.
 */
final class Spacing {

  /** A gap is this many times the usual interval, and no less than so many seconds. */
  private static final double GAP_INTERVALS = 5;

  private static final double SHORTEST_GAP = 2;

  /** Between two readings no more than this apart a straight line is drawn, s. */
  private static final double LINE = 2.5;

  /** Below this speed a track that is missing does not matter, m/s. */
  private static final double STANDSTILL = 1.5;

  /** What is no place, and no height or vertical speed, which the smoother takes as it is. */
  private static final Set<RecordedQuantity> FILLED =
      EnumSet.complementOf(
          EnumSet.of(
              RecordedQuantity.HEIGHT,
              RecordedQuantity.PRESSURE_ALTITUDE,
              RecordedQuantity.VERTICAL_SPEED,
              RecordedQuantity.LATITUDE,
              RecordedQuantity.LONGITUDE));

  private final Columns columns;
  private final Readings readings;
  private final int[] rows;

  /** Readings in the order of time, and the rows where they stood. */
  Spacing(Columns columns, Readings readings, int... rows) {
    this.columns = columns;
    this.readings = readings;
    this.rows = rows;
  }

  void gaps() {
    double[] intervals = new double[columns.size() - 1];
    for (int k = 0; k + 1 < columns.size(); k++) {
      intervals[k] = columns.time(k + 1) - columns.time(k);
    }
    double[] sorted = intervals.clone();
    Arrays.sort(sorted);
    double usual = sorted.length == 0 ? 0 : sorted[sorted.length / 2];
    for (int k = 0; k < intervals.length; k++) {
      if (intervals[k] > Math.max(SHORTEST_GAP, GAP_INTERVALS * usual)) {
        readings.note(RepairKind.GAP, null, 1, rows[k], rows[k]);
      }
    }
  }

  /** A receiver may leave out the track when it stands; the one before is as good. */
  void standing() {
    if (!columns.has(RecordedQuantity.GROUND_SPEED) || !columns.has(RecordedQuantity.TRACK)) {
      return;
    }
    double[] speed = columns.get(RecordedQuantity.GROUND_SPEED);
    double[] track = columns.get(RecordedQuantity.TRACK);
    double before = 0;
    for (int k = 0; k < columns.size(); k++) {
      if (Double.isNaN(track[k]) && speed[k] < STANDSTILL) {
        track[k] = before;
        readings.note(RepairKind.STANDING, RecordedQuantity.TRACK, 1, rows[k], rows[k]);
      }
      before = Double.isNaN(track[k]) ? before : track[k];
    }
  }

  void slow() {
    for (RecordedQuantity quantity : FILLED) {
      if (columns.has(quantity)) {
        fill(quantity, columns.get(quantity));
      }
    }
  }

  private void fill(RecordedQuantity quantity, double[] values) {
    int before = -1;
    for (int k = 0; k < values.length; k++) {
      if (Double.isNaN(values[k])) {
        continue;
      }
      if (before >= 0 && k - before > 1 && columns.time(k) - columns.time(before) <= LINE) {
        double change = values[k] - values[before];
        if (quantity.goesRound()) {
          change = FastMath.IEEEremainder(change, 2 * FastMath.PI);
        }
        for (int i = before + 1; i < k; i++) {
          double share =
              (columns.time(i) - columns.time(before)) / (columns.time(k) - columns.time(before));
          values[i] = values[before] + share * change;
        }
        readings.note(RepairKind.SLOW, quantity, k - before - 1, rows[before + 1], rows[k - 1]);
      }
      before = k;
    }
  }
}
