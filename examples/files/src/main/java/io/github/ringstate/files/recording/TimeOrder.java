package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import java.util.Arrays;

/**
 * Which readings of a file make one clock that goes forward. The longest row of readings with
 * increasing times is kept (patience sorting: M. L. Fredman, On computing the length of longest
 * increasing subsequences, Discrete Mathematics 11, 1975, from memory), so that one wrong time
 * costs one reading, wherever it points. Many others in a row are either readings that stand in the
 * wrong place and fit into a gap, or a second clock, and then it cannot be said which counts.
 */
final class TimeOrder {

  /** So many readings in a row that do not fit are more than wrong times. */
  private static final int LONG = 20;

  private final Readings readings;

  /** For each reading of the file, whether it is kept. */
  private final boolean[] kept;

  private int[] order = new int[0];

  /** The times of those in order. */
  private double[] times = {};

  private TimeOrder(Readings readings) {
    this.readings = readings;
    kept = new boolean[readings.size()];
  }

  /** The readings to keep, in the order of their times, which differ. */
  static int[] of(Readings readings) {
    TimeOrder clock = new TimeOrder(readings);
    int[] rows = clock.firstOfEach();
    clock.longest(rows);
    clock.others(rows);
    return clock.order;
  }

  /** The readings that have a time; of several of one time the first, which takes from them. */
  private int[] firstOfEach() {
    int[] rows = new int[readings.size()];
    int count = 0;
    for (int row = 0; row < readings.size(); row++) {
      double time = readings.time(row);
      if (Double.isNaN(time)) {
        readings.note(RepairKind.NO_TIME, null, 1, row, row);
      } else if (count > 0 && readings.time(rows[count - 1]) == time) {
        if (!readings.merge(rows[count - 1], row)) {
          readings.note(RepairKind.REPEATED, null, 1, row, row);
        }
      } else {
        rows[count++] = row;
      }
    }
    return Arrays.copyOf(rows, count);
  }

  private void longest(int... rows) {
    int[] tail = new int[rows.length];
    int[] before = new int[rows.length];
    double[] last = new double[rows.length];
    int length = 0;
    for (int i = 0; i < rows.length; i++) {
      double time = time(rows[i]);
      int found = Arrays.binarySearch(last, 0, length, time);
      int low = found >= 0 ? found : -found - 1;
      before[i] = low > 0 ? tail[low - 1] : -1;
      tail[low] = i;
      last[low] = time;
      length = Math.max(length, low + 1);
    }
    int[] longest = new int[length];
    int at = length > 0 ? tail[length - 1] : -1;
    for (int k = length - 1; k >= 0; k--) {
      longest[k] = rows[at];
      kept[rows[at]] = true;
      at = before[at];
    }
    keep(longest);
  }

  /** Goes through what is not kept, block by block. */
  private void others(int... rows) {
    int from = 0;
    while (from < rows.length) {
      if (kept[rows[from]]) {
        from++;
        continue;
      }
      int to = from;
      while (to < rows.length && !kept[rows[to]]) {
        to++;
      }
      block(Arrays.copyOfRange(rows, from, to));
      from = to;
    }
  }

  /** Readings that follow one another in the file and do not fit where they stand. */
  private void block(int... rows) {
    int again = 0;
    for (int row : rows) {
      int place = place(row);
      if (place >= 0 && readings.isSame(order[place], row)) {
        again++;
      }
    }
    if (rows.length - again <= LONG) {
      note(RepairKind.REPEATED, again, rows);
      note(RepairKind.BACKWARD, rows.length - again, rows);
      return;
    }
    int first = place(rows[0]);
    int last = place(rows[rows.length - 1]);
    if (first < 0 && first == last && isForward(rows)) {
      int gap = -first - 1;
      int[] wider = new int[order.length + rows.length];
      System.arraycopy(order, 0, wider, 0, gap);
      System.arraycopy(rows, 0, wider, gap, rows.length);
      System.arraycopy(order, gap, wider, gap + rows.length, order.length - gap);
      keep(wider);
      note(RepairKind.OUT_OF_ORDER, rows.length, rows);
      return;
    }
    throw UserError.file(
        readings.file(),
        "holds two recordings: its clock goes back, and "
            + rows.length
            + " readings have times among those of others; split the file there");
  }

  private boolean isForward(int... rows) {
    for (int i = 1; i < rows.length; i++) {
      if (!(readings.time(rows[i]) > readings.time(rows[i - 1]))) {
        return false;
      }
    }
    return true;
  }

  private void note(RepairKind kind, int count, int... rows) {
    if (count > 0) {
      readings.note(kind, null, count, rows[0], rows[rows.length - 1]);
    }
  }

  private void keep(int... rows) {
    order = rows;
    times = Arrays.stream(rows).mapToDouble(this::time).toArray();
  }

  /** Where a reading stands among those that are kept, or would: {@link Arrays#binarySearch}. */
  private int place(int row) {
    return Arrays.binarySearch(times, time(row));
  }

  /** A minus sign on zero tells no times apart. */
  private double time(int row) {
    return readings.time(row) + 0.0;
  }
}
