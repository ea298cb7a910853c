package io.github.ringstate.instructor.fit;

import io.github.ringstate.air.WindField;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Recording;
import org.hipparchus.util.FastMath;

/**
 * A wind from behind along the way that a recorded flight took in the last seconds, at each of its
 * times. No air moves so: it is for finding out where encounters are before their own way is known.
 */
final class TurningWind implements WindField {

  /** The way is the mean over so long before, s. */
  private static final double BEFORE = 8;

  private final Recording recording;
  private final double[] north;
  private final double[] east;

  TurningWind(Recording recording, double fromBehind) {
    this.recording = recording;
    north = new double[recording.size()];
    east = new double[recording.size()];
    double sumNorth = 0;
    double sumEast = 0;
    int from = 0;
    for (int k = 0; k < north.length; k++) {
      sumNorth += along(k, 0);
      sumEast += along(k, FastMath.PI / 2);
      while (recording.time(k) - recording.time(from) > BEFORE) {
        sumNorth -= along(from, 0);
        sumEast -= along(from, FastMath.PI / 2);
        from++;
      }
      double way = FastMath.atan2(sumEast, sumNorth);
      north[k] = fromBehind * FastMath.cos(way);
      east[k] = fromBehind * FastMath.sin(way);
    }
  }

  /** The velocity over the ground along a direction, m/s; 0 where none is recorded. */
  private double along(int k, double direction) {
    double speed = recording.value(Channel.GROUND_SPEED, k);
    double track = recording.value(Channel.TRACK, k);
    return Double.isNaN(speed + track) ? 0 : speed * FastMath.cos(track - direction);
  }

  @Override
  public void velocity(
      double time, double northward, double eastward, double height, double[] result) {
    int k = Math.min(north.length - 1, recording.indexAt(time));
    result[0] = north[k];
    result[1] = east[k];
    result[2] = 0;
  }
}
