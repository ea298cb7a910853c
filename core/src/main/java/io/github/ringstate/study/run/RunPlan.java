package io.github.ringstate.study.run;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindTriangle;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Briefing;

/**
 * A slow run over the ground, as for photographs or a survey: what is to be flown, before it is
 * known on which track.
 *
 * @param craft the helicopter
 * @param air the air at the height of the run
 * @param windFrom where the wind comes from, rad clockwise from north
 * @param windSpeed mean wind speed at the height of the run, m/s
 * @param gust greatest wind speed at that height, m/s, not below the mean
 * @param groundSpeed ground speed to be held, m/s
 * @param descent rate of descent planned, m/s, not negative
 * @param height height above the ground, m
 * @param margin height to be left below the lowest point of a descent, m, not negative
 */
public record RunPlan(
    Helicopter craft,
    Air air,
    double windFrom,
    double windSpeed,
    double gust,
    double groundSpeed,
    double descent,
    double height,
    double margin) {

  /** Where the wind comes from. */
  public static final Quantity WIND_FROM = new Quantity("wind direction", Unit.DEGREE, 0, 360);

  /** Winds and gusts that are accepted, at the height of the run. */
  public static final Quantity WIND = new Quantity("wind at the height flown", Unit.KNOT, 0, 100);

  /** Ground speeds to be held. */
  public static final Quantity GROUND_SPEED = new Quantity("ground speed", Unit.KNOT, 0, 60);

  /** Rates of descent that may be planned. */
  public static final Quantity DESCENT =
      new Quantity("planned descent", Unit.FOOT_PER_MINUTE, 0, 1000);

  /** Heights above the ground. */
  public static final Quantity HEIGHT = new Quantity("height above ground", Unit.FOOT, 20, 9000);

  /** Checks all numbers. */
  public RunPlan {
    WIND_FROM.check(Unit.DEGREE.fromSi(windFrom));
    WIND.check(Unit.KNOT.fromSi(windSpeed));
    WIND.within(Unit.KNOT.fromSi(windSpeed), WIND.high()).check(Unit.KNOT.fromSi(gust));
    GROUND_SPEED.check(Unit.KNOT.fromSi(groundSpeed));
    DESCENT.check(Unit.FOOT_PER_MINUTE.fromSi(descent));
    HEIGHT.check(Unit.FOOT.fromSi(height));
    Briefing.MARGIN.check(margin);
  }

  /**
   * The least wind speed.
   *
   * @return as far below the mean as the gust is above it, m/s, at least 0 (assumed)
   */
  public double lull() {
    return Math.max(0, 2 * windSpeed - gust);
  }

  /**
   * The direction of the run with the wind behind.
   *
   * @return the track, rad clockwise from north
   */
  public double downwind() {
    return windFrom < Math.PI ? windFrom + Math.PI : windFrom - Math.PI;
  }

  /**
   * The wind triangle of a track in the mean wind.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return the triangle
   */
  public WindTriangle triangle(double track) {
    return triangle(track, windSpeed);
  }

  /**
   * The minimum airspeed that gusts and lulls leave on a track. Along the wind the airspeed has one
   * least value, where what is left lies across it.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return the airspeed, m/s
   */
  public double minimumAirspeed(double track) {
    double alongWind = new WindTriangle(Wind.from(windFrom, 1), track, 0).tailwind() * groundSpeed;
    double speed = Math.min(Math.max(alongWind, lull()), gust);
    return triangle(track, speed).airspeed();
  }

  /**
   * The maximum airspeed in gusts and lulls on a track.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return the airspeed, m/s
   */
  public double maximumAirspeed(double track) {
    return Math.max(triangle(track, lull()).airspeed(), triangle(track, gust).airspeed());
  }

  /**
   * Whether gusts from behind are faster than the run, so that with its nose on the track the craft
   * would go backwards through the air.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return true if they are
   */
  public boolean isOvertaken(double track) {
    // a hair more, so that tracks mirrored in the wind are alike whatever the rounding
    return triangle(track, gust).tailwind() > groundSpeed + 1e-9;
  }

  /**
   * Whether the height is enough for a loss and leaves the margin below it.
   *
   * @param loss altitude loss, m; infinite where the descent is not arrested
   * @return true if it is
   */
  public boolean covers(double loss) {
    return loss + margin <= height;
  }

  /**
   * The same plan at another ground speed.
   *
   * @param other ground speed, m/s
   * @return the changed plan
   */
  public RunPlan withGroundSpeed(double other) {
    return new RunPlan(craft, air, windFrom, windSpeed, gust, other, descent, height, margin);
  }

  private WindTriangle triangle(double track, double speed) {
    return new WindTriangle(Wind.from(windFrom, speed), track, groundSpeed);
  }
}
