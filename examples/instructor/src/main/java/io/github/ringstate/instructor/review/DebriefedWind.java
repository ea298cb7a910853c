package io.github.ringstate.instructor.review;

import io.github.ringstate.air.Wind;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.WindEstimate;
import org.hipparchus.util.FastMath;

/**
 * The wind in which a recorded flight was flown.
 *
 * @param wind the wind
 * @param deviation how far its speed along any direction may be off, a standard deviation, m/s
 * @param source where it is from, in words
 * @param known whether anything is known of it
 */
record DebriefedWind(Wind wind, double deviation, String source, boolean known) {

  /** A wind that someone reported is not that at the place and height of the flight (assumed). */
  private static final double REPORTED_DEVIATION = Unit.KNOT.toSi(2);

  static DebriefedWind given(Wind wind) {
    return new DebriefedWind(wind, REPORTED_DEVIATION, "given", true);
  }

  static DebriefedWind estimated(Recording recording) {
    WindEstimate estimate = WindEstimate.of(recording);
    return new DebriefedWind(
        estimate.wind(),
        estimate.deviation(),
        estimate.source().label(),
        estimate.source() != WindEstimate.Source.UNKNOWN);
  }

  /** How much of it blows from behind on a track, m/s. */
  double fromBehind(double track) {
    return wind.north() * FastMath.cos(track) + wind.east() * FastMath.sin(track);
  }
}
