package io.github.ringstate.recording;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.WindField;
import io.github.ringstate.inflow.BoundaryCriterion;
import org.hipparchus.util.FastMath;

/**
 * How the rotor moved through the air at the times of a recording. The disc stands across the
 * thrust, and the thrust is what weight and acceleration ask for; the drag of the body is left out,
 * which at the speeds of the ring state is below one per cent of the weight.
 */
final class AirMotion {

  /** The horizontal acceleration is the slope of the ground velocity over so long either way, s. */
  private static final double SLOPE_TIME = 0.75;

  private final Recording recording;
  private final VerticalMotion motion;
  private final WindField wind;
  private final double hoverInduced;

  /** Velocity over the ground, m/s; both NaN where it is not recorded. */
  private final double[] north;

  private final double[] east;
  private final double[] windSpeed = new double[3];

  AirMotion(VerticalMotion motion, WindField wind, double hoverInduced) {
    this.motion = motion;
    this.wind = wind;
    this.hoverInduced = hoverInduced;
    recording = motion.recording();
    north = new double[recording.size()];
    east = new double[recording.size()];
    for (int k = 0; k < recording.size(); k++) {
      double speed = recording.value(Channel.GROUND_SPEED, k);
      double track = recording.value(Channel.TRACK, k);
      north[k] = speed * FastMath.cos(track);
      east[k] = speed * FastMath.sin(track);
    }
  }

  /** Whether the velocity over the ground is recorded at a time. */
  boolean known(int k) {
    return !Double.isNaN(north[k]);
  }

  private void wind(int k) {
    wind.velocity(recording.time(k), 0, 0, motion.height(k), windSpeed);
  }

  /** Horizontal airspeed, m/s. */
  double horizontal(int k) {
    wind(k);
    return FastMath.hypot(north[k] - windSpeed[0], east[k] - windSpeed[1]);
  }

  /**
   * How far outside the boundary, as {@link BoundaryCriterion#margin}, with additions to the
   * vertical speed and to the horizontal airspeed, m/s.
   */
  double margin(BoundaryCriterion boundary, int k, double faster, double ahead) {
    wind(k);
    double airNorth = north[k] - windSpeed[0];
    double airEast = east[k] - windSpeed[1];
    double horizontal = FastMath.hypot(airNorth, airEast);
    double stretch = horizontal < 0.1 ? 1 : Math.max(0, horizontal + ahead) / horizontal;
    airNorth *= stretch;
    airEast *= stretch;
    double airUp = motion.verticalSpeed(k) + faster - windSpeed[2];
    int from = k;
    int to = k;
    while (from > 0 && known(from - 1) && recording.time(k) - recording.time(from) < SLOPE_TIME) {
      from--;
    }
    while (to + 1 < recording.size()
        && known(to + 1)
        && recording.time(to) - recording.time(k) < SLOPE_TIME) {
      to++;
    }
    double dt = recording.time(to) - recording.time(from);
    double thrustNorth = dt > 0 ? (north[to] - north[from]) / dt : 0;
    double thrustEast = dt > 0 ? (east[to] - east[from]) / dt : 0;
    double thrustUp =
        Math.max(1, StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901 + motion.acceleration(k));
    double thrust =
        FastMath.sqrt(thrustNorth * thrustNorth + thrustEast * thrustEast + thrustUp * thrustUp);
    double axial = (airNorth * thrustNorth + airEast * thrustEast + airUp * thrustUp) / thrust;
    double total = airNorth * airNorth + airEast * airEast + airUp * airUp;
    double edgewise = FastMath.sqrt(Math.max(0, total - axial * axial));
    return boundary.margin(edgewise / hoverInduced, axial / hoverInduced);
  }
}
