package io.github.ringstate.study.run;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindTriangle;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Briefing;
import java.util.OptionalDouble;

/**
 * A slow run over the ground, as for photographs or a survey: what is to be flown, before it is
 * known on which track.
 *
 * @param craft the helicopter
 * @param curve what its flight manual says of height and airspeed
 * @param air the air at the height of the run
 * @param wind the wind at the height of the run
 * @param groundSpeed ground speed to be held, m/s
 * @param descent rate of descent planned, m/s, not negative
 * @param height height above the ground, m
 * @param lowestHeight height below which no run is flown, m
 * @param margin height to be left below the lowest point of a descent, m, not negative
 */
public record RunPlan(
    Helicopter craft,
    HeightVelocityCurve curve,
    Air air,
    RunWind wind,
    double groundSpeed,
    double descent,
    double height,
    double lowestHeight,
    double margin) {

  /** Ground speeds to be held. */
  public static final Quantity GROUND_SPEED = new Quantity("ground speed", Unit.KNOT, 0, 60);

  /** Rates of descent that may be planned. */
  public static final Quantity DESCENT =
      new Quantity("planned descent", Unit.FOOT_PER_MINUTE, 0, 1000);

  /** Heights above the ground. */
  public static final Quantity HEIGHT = new Quantity("height above ground", Unit.FOOT, 20, 9000);

  /** Heights that an operator may set as the lowest. */
  public static final Quantity LOWEST_HEIGHTS =
      new Quantity("lowest height of runs", Unit.FOOT, 20, 5000);

  /**
   * The lowest height unless the operator sets another, m: 500 ft, the least that 14 CFR 91.119(c)
   * lets aircraft fly above the surface outside congested areas. Its paragraph (d) lets helicopters
   * go lower, which is for the operator to decide.
   */
  public static final double LOWEST_HEIGHT = Unit.FOOT.toSi(500);

  /** A hair by which rounding may move a speed, m/s. */
  private static final double HAIR = 1e-9;

  /** Checks all numbers. */
  public RunPlan {
    GROUND_SPEED.check(Unit.KNOT.fromSi(groundSpeed));
    DESCENT.check(Unit.FOOT_PER_MINUTE.fromSi(descent));
    HEIGHT.check(Unit.FOOT.fromSi(height));
    LOWEST_HEIGHTS.check(Unit.FOOT.fromSi(lowestHeight));
    Briefing.MARGIN.check(margin);
  }

  /**
   * The wind triangle of a track in the mean wind.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return the triangle
   */
  public WindTriangle triangle(double track) {
    return triangle(track, wind.speed());
  }

  /**
   * The minimum airspeed that gusts, lulls and the allowance leave on a track. Along the wind the
   * airspeed has one least value, where what is left lies across it.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return the airspeed, m/s
   */
  public double minimumAirspeed(double track) {
    double alongWind =
        new WindTriangle(Wind.from(wind.from(), 1), track, 0).tailwind() * groundSpeed;
    double speed = Math.min(Math.max(alongWind, wind.lull()), wind.gust());
    return Math.max(0, triangle(track, speed).airspeed() - wind.allowance());
  }

  /**
   * The maximum airspeed in gusts and lulls on a track, the allowance included.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return the airspeed, m/s
   */
  public double maximumAirspeed(double track) {
    return Math.max(
            triangle(track, wind.lull()).airspeed(), triangle(track, wind.gust()).airspeed())
        + wind.allowance();
  }

  /**
   * Whether gusts from behind, the allowance included, are faster than the run, so that with its
   * nose on the track the craft would go backwards through the air.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return true if they are
   */
  public boolean isOvertaken(double track) {
    // a hair more, so that tracks mirrored in the wind are alike whatever the rounding
    return triangle(track, wind.gust()).tailwind() + wind.allowance() > groundSpeed + HAIR;
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
   * The airspeed below which the height flown lies in the area that the height-velocity curve says
   * to avoid. The curve is taken to hold calibrated airspeeds, which at low speeds are the true
   * ones times the root of the density ratio.
   *
   * @return the true airspeed, m/s; empty where the area does not reach this height, or no curve is
   *     known
   */
  public OptionalDouble minimumByCurve() {
    OptionalDouble calibrated = curve.minimumAirspeed(height);
    return calibrated.isPresent()
        ? OptionalDouble.of(calibrated.getAsDouble() / Math.sqrt(air.densityRatio()))
        : calibrated;
  }

  /**
   * The same plan at another ground speed.
   *
   * @param other ground speed, m/s
   * @return the changed plan
   */
  public RunPlan withGroundSpeed(double other) {
    return new RunPlan(craft, curve, air, wind, other, descent, height, lowestHeight, margin);
  }

  /**
   * The same plan with another craft in another air.
   *
   * @param other the helicopter
   * @param another the air at the height of the run
   * @return the changed plan
   */
  public RunPlan on(Helicopter other, Air another) {
    return new RunPlan(
        other, curve, another, wind, groundSpeed, descent, height, lowestHeight, margin);
  }

  private WindTriangle triangle(double track, double speed) {
    return new WindTriangle(Wind.from(wind.from(), speed), track, groundSpeed);
  }
}
