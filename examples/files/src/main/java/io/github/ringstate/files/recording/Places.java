package io.github.ringstate.files.recording;

import java.util.Arrays;
import org.hipparchus.util.FastMath;

/**
 * Speed and track from latitude and longitude. Along each axis the speed is the median of the
 * slopes between all pairs of some readings around a time (P. K. Sen, Estimates of the regression
 * coefficient based on Kendall's tau, Journal of the American Statistical Association 63, 1968,
 * pages 1379 to 1389, from memory), which one wrong place in nine does not move.
 */
final class Places {

  /** Radius of a sphere with the volume of the earth, m (WGS 84, from memory). */
  private static final double EARTH = 6_371_000.8;

  /** So many readings before and after, within so many seconds. */
  private static final int AROUND = 4;

  private static final double WITHIN = 2.5;

  private final Columns columns;
  private final int[] known;
  private final double[] north;
  private final double[] east;
  private final double[] slopes = new double[AROUND * (2 * AROUND + 1)];

  private Places(Columns columns) {
    this.columns = columns;
    double[] latitude = columns.get(RecordedQuantity.LATITUDE);
    double[] longitude = columns.get(RecordedQuantity.LONGITUDE);
    int[] rows = new int[columns.size()];
    north = new double[columns.size()];
    east = new double[columns.size()];
    int count = 0;
    for (int k = 0; k < columns.size(); k++) {
      if (!Double.isNaN(latitude[k]) && !Double.isNaN(longitude[k])) {
        int before = count > 0 ? rows[count - 1] : k;
        double turn = FastMath.IEEEremainder(longitude[k] - longitude[before], 2 * FastMath.PI);
        north[k] = EARTH * latitude[k];
        east[k] = east[before] + EARTH * turn * FastMath.cos(latitude[k]);
        rows[count++] = k;
      }
    }
    known = Arrays.copyOf(rows, count);
  }

  /** Adds speed and track if the places give them and nothing else does; how many. */
  static int addVelocity(Columns columns) {
    boolean wanted =
        !columns.has(RecordedQuantity.GROUND_SPEED) || !columns.has(RecordedQuantity.TRACK);
    boolean given =
        columns.has(RecordedQuantity.LATITUDE) && columns.has(RecordedQuantity.LONGITUDE);
    return wanted && given ? new Places(columns).add() : 0;
  }

  private int add() {
    double[] speed = new double[columns.size()];
    double[] track = new double[columns.size()];
    Arrays.fill(speed, Double.NaN);
    Arrays.fill(track, Double.NaN);
    int count = 0;
    for (int i = 0; i < known.length; i++) {
      int from = i;
      int to = i;
      double now = columns.time(known[i]);
      while (from > 0 && i - from < AROUND && now - columns.time(known[from - 1]) <= WITHIN) {
        from--;
      }
      while (to + 1 < known.length
          && to - i < AROUND
          && columns.time(known[to + 1]) - now <= WITHIN) {
        to++;
      }
      double alongNorth = slope(north, from, to);
      double alongEast = slope(east, from, to);
      double whole = FastMath.hypot(alongNorth, alongEast);
      if (RecordedQuantity.GROUND_SPEED.holds(whole)) {
        speed[known[i]] = whole;
        track[known[i]] = FastMath.atan2(alongEast, alongNorth);
        count++;
      }
    }
    if (count > 0) {
      columns.put(RecordedQuantity.GROUND_SPEED, speed);
      columns.put(RecordedQuantity.TRACK, track);
    }
    return count;
  }

  private double slope(double[] place, int from, int to) {
    int count = 0;
    for (int i = from; i <= to; i++) {
      for (int j = i + 1; j <= to; j++) {
        slopes[count++] =
            (place[known[j]] - place[known[i]]) / (columns.time(known[j]) - columns.time(known[i]));
      }
    }
    if (count == 0) {
      return Double.NaN;
    }
    Arrays.sort(slopes, 0, count);
    return (slopes[count / 2] + slopes[(count - 1) / 2]) / 2;
  }
}
