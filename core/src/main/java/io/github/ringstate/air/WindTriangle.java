package io.github.ringstate.air;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.util.FastMath;

/**
 * The triangle of ground speed, wind and airspeed, solved for a track and a ground speed that are
 * held: velocity through the air = velocity over the ground - wind (any handbook of air
 * navigation).
 *
 * @param wind the wind
 * @param track direction flown over the ground, rad clockwise from north, within two turns of it
 * @param groundSpeed speed over the ground, m/s, 0 to 100
 */
public record WindTriangle(Wind wind, double track, double groundSpeed) {

  private static final Quantity GROUND_SPEED =
      new Quantity("ground speed", Unit.METRE_PER_SECOND, 0, 100);
  private static final Quantity TRACK = new Quantity("track", Unit.DEGREE, -720, 720);

  /**
   * Checks track and ground speed.
   *
   * @throws io.github.ringstate.quantity.OutOfRangeException if one is outside its range or not a
   *     number
   */
  public WindTriangle {
    TRACK.check(Unit.DEGREE.fromSi(track));
    GROUND_SPEED.check(groundSpeed);
  }

  /**
   * The wind along the track.
   *
   * @return the component, m/s; positive from behind
   */
  public double tailwind() {
    return wind.along(track);
  }

  /**
   * The wind across the track.
   *
   * @return the component, m/s; positive from the left
   */
  public double crosswind() {
    return wind.across(track);
  }

  /**
   * The speed through the air.
   *
   * @return the speed in whatever direction, m/s
   */
  public double airspeed() {
    double along = groundSpeed - tailwind();
    double across = crosswind();
    return Math.sqrt(along * along + across * across);
  }

  /**
   * The heading on which the craft flies straight through the air, without sideslip.
   *
   * @return the heading, rad clockwise from north, at least 0 and below 2 pi; the track if there is
   *     no airspeed
   */
  public double heading() {
    return turned(track - driftToTheRight());
  }

  /**
   * Where the wind comes from that the craft feels with its nose along the track, as it is held for
   * a camera.
   *
   * @return the direction, rad clockwise from the nose, at least 0 and below 2 pi; 0 if there is no
   *     airspeed
   */
  public double relativeWind() {
    return turned(-driftToTheRight());
  }

  /** How far the wind carries the craft to the right of its heading, rad; zero without airspeed. */
  private double driftToTheRight() {
    double along = groundSpeed - tailwind();
    double across = crosswind();
    return along == 0 && across == 0 ? 0 : FastMath.atan2(across, along);
  }

  private static double turned(double angle) {
    double whole = 2 * Math.PI;
    double positive = angle - whole * Math.floor(angle / whole);
    // a tiny negative angle plus a turn rounds to a whole turn
    return positive < whole ? positive : 0;
  }
}
