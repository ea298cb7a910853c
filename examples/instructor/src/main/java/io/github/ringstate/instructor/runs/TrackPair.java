package io.github.ringstate.instructor.runs;

import java.util.ArrayList;
import java.util.List;

/**
 * Tracks that are alike in all that is computed: a track and its mirror image in the wind, which
 * differ in the side of the crosswind alone; in calm air all of them.
 *
 * @param rows the tracks; the first has the wind from the left
 * @param every whether these are all tracks
 */
record TrackPair(List<RunRow> rows, boolean every) {

  /** Pairs are at most this far from the same airspeed, m/s: rounding. */
  private static final double SAME = 1e-6;

  TrackPair {
    rows = List.copyOf(rows);
  }

  /**
   * Puts tracks together.
   *
   * @param rows every track, evenly spread, with mirror images among them
   * @return the pairs, from the track against the wind to that with the wind behind
   */
  static List<TrackPair> of(List<RunRow> rows) {
    double most = 0;
    int against = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rows.size(); i++) {
      double airspeed = rows.get(i).track().triangle().airspeed();
      least = Math.min(least, airspeed);
      if (airspeed > most + SAME) {
        most = airspeed;
        against = i;
      }
    }
    if (most - least <= SAME) {
      return List.of(new TrackPair(rows, true));
    }
    int count = rows.size();
    List<TrackPair> pairs = new ArrayList<>();
    for (int turn = 0; turn <= count / 2; turn++) {
      RunRow right = rows.get((against + turn) % count);
      RunRow left = rows.get((against - turn + count) % count);
      pairs.add(
          new TrackPair(turn % (count / 2) == 0 ? List.of(right) : List.of(right, left), false));
    }
    return pairs;
  }

  /** What all of them have. */
  RunRow first() {
    return rows.get(0);
  }
}
