package io.github.ringstate.recording;

import org.hipparchus.util.FastMath;

/**
 * Where the margin to the boundary becomes negative, and how well that time is known.
 *
 * @param recording the times
 * @param margin the margin at each of them; NaN where it is unknown
 * @param first the first time inside
 */
@SuppressWarnings("ArrayRecordComponent") // made and asked at once
record MarginCrossing(Recording recording, double[] margin, int first) {

  /** Where no boundary is near; a crossing from there may be anywhere between two readings. */
  static final double NOT_NEAR = 1;

  /** Beyond a gap as long as this nothing is said of the flight in it, s. */
  private static final double GAP = 5;

  /**
   * The rate of the margin is taken over two readings either way within so long, s, and at least
   * between the two readings of the onset. Over seconds it would not be that at the onset.
   */
  private static final double NEAR = 0.45;

  /** A time is told as no worse than so many times that over which the rate was taken. */
  private static final double MOST = 10;

  static boolean gapBefore(Recording recording, int k) {
    return recording.time(k) - recording.time(k - 1) > GAP;
  }

  /** Whether the boundary is crossed between the reading before and this one. */
  private boolean isSeen() {
    return first > 0 && margin[first - 1] > 0 && margin[first] < 0 && !gapBefore(recording, first);
  }

  /** Where the margin, straight between two times, is zero; the first time if it is nowhere. */
  double time() {
    if (!isSeen()) {
      return recording.time(first);
    }
    double share = margin[first - 1] / (margin[first - 1] - margin[first]);
    return recording.time(first - 1) + share * between();
  }

  private double between() {
    return recording.time(first) - recording.time(first - 1);
  }

  /**
   * The deviation of the margin over its rate of change around the onset. Where no crossing was
   * recorded, as long as the readings are around.
   *
   * @param ofMargin standard deviation of the margin at the first time inside
   */
  double deviation(double ofMargin) {
    int from = Math.max(0, first - 1);
    from -= from > 0 && recording.time(first) - recording.time(from - 1) <= NEAR ? 1 : 0;
    int to = Math.min(Math.max(first, from + 1), margin.length - 1);
    while (to < Math.min(first + 2, margin.length - 1)
        && recording.time(to + 1) - recording.time(first) <= NEAR) {
      to++;
    }
    double whole = recording.time(to) - recording.time(from);
    double rate = (margin[from] - margin[to]) / Math.max(1e-6, whole);
    if (!(rate > 0 && isSeen())) {
      return whole;
    }
    double known = Math.min(FastMath.hypot(ofMargin, offTheLine()) / rate, MOST * whole);
    return margin[first - 1] < NOT_NEAR
        ? known
        : FastMath.hypot(known, between() / FastMath.sqrt(12));
  }

  /** How far a margin that bends is off the straight line between the two readings of the onset. */
  private double offTheLine() {
    double most = 0;
    for (int k = Math.max(1, first - 1); k <= Math.min(first, margin.length - 2); k++) {
      double off = Math.abs(margin[k - 1] - 2 * margin[k] + margin[k + 1]) / 8; // h^2 f''/8
      most = off > most ? off : most; // and not where a margin is unknown
    }
    return most;
  }
}
