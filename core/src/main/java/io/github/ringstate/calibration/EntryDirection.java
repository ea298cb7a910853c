package io.github.ringstate.calibration;

import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Recording;
import org.hipparchus.util.FastMath;

/**
 * The way over the ground that an encounter came on. The wind of an entry blows along it, whatever
 * was flown before.
 */
public final class EntryDirection {

  /** From so long before the onset, s. */
  static final double BEFORE = 8;

  /** Slower than this over the ground, m/s, a direction is not known from the entry. */
  private static final double SLOW = 1.5;

  private EntryDirection() {}

  /**
   * The direction of an encounter.
   *
   * @param recording with ground speed and track
   * @param found an encounter in it
   * @return where the craft went in the 8 s before the onset, rad clockwise from north; where it
   *     hardly moved, where it went from then until the arrest
   */
  public static double of(Recording recording, FoundEncounter found) {
    double onset = found.onsetTime().value();
    int from = recording.indexAt(onset - BEFORE);
    int at = recording.indexAt(onset);
    double[] way = moved(recording, from, at);
    if (!(FastMath.hypot(way[0], way[1]) > SLOW * (at - from))) {
      double end = found.arrestTime().map(arrest -> arrest.value()).orElse(onset + BEFORE);
      way = moved(recording, from, recording.indexAt(end));
    }
    return FastMath.atan2(way[1], way[0]);
  }

  /** The sum of the recorded velocities over the ground, north and east, m/s. */
  private static double[] moved(Recording recording, int from, int to) {
    double north = 0;
    double east = 0;
    for (int k = from; k < to; k++) {
      double speed = recording.value(Channel.GROUND_SPEED, k);
      double track = recording.value(Channel.TRACK, k);
      if (!Double.isNaN(speed + track)) {
        north += speed * FastMath.cos(track);
        east += speed * FastMath.sin(track);
      }
    }
    return new double[] {north, east};
  }
}
