package io.github.ringstate.air;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.util.FastMath;

/**
 * A wind that comes round: the level part of another wind, turned about the vertical by an angle
 * that grows smoothly from nothing, as a craft meets it that turns or flies into a change of wind.
 *
 * <p>The angle follows 10 t^3 - 15 t^4 + 6 t^5 over the time of the turn, so that the acceleration
 * of the air has no jump.
 */
public final class TurningWind extends MadeOf implements WindField {

  private static final Quantity ANGLE = new Quantity("turn of the wind", Unit.DEGREE, -360, 360);
  private static final Quantity START =
      new Quantity("start of the turn of the wind", Unit.SECOND, -1e5, 1e5);
  private static final Quantity DURATION =
      new Quantity("time of the turn of the wind", Unit.SECOND, 0.1, 1e5);

  private final WindField before;
  private final double angle;
  private final double start;
  private final double duration;

  private TurningWind(WindField before, double angle, double start, double duration) {
    super(before, angle, start, duration);
    this.before = before;
    this.angle = angle;
    this.start = start;
    this.duration = duration;
  }

  /**
   * Turns a wind.
   *
   * @param before the wind before it turns
   * @param angle how far it turns, rad, clockwise from above (veering) if positive; within a turn
   *     either way
   * @param start when it begins to turn, s
   * @param duration how long it takes, s, 0.1 to 1e5
   * @return the turning wind
   * @throws io.github.ringstate.quantity.OutOfRangeException if an argument is outside its range or
   *     not a number
   */
  public static TurningWind of(WindField before, double angle, double start, double duration) {
    ANGLE.check(Unit.DEGREE.fromSi(angle));
    START.check(start);
    DURATION.check(duration);
    return new TurningWind(before, angle, start, duration);
  }

  @Override
  public void velocity(double time, double north, double east, double height, double[] result) {
    before.velocity(time, north, east, height, result);
    double t = Math.min(Math.max((time - start) / duration, 0), 1);
    double turned = angle * t * t * t * (10 - t * (15 - 6 * t));
    double cosine = FastMath.cos(turned);
    double sine = FastMath.sin(turned);
    double towardNorth = result[0];
    result[0] = towardNorth * cosine - result[1] * sine;
    result[1] = towardNorth * sine + result[1] * cosine;
  }

  @Override
  public boolean variesWithHeight() {
    return before.variesWithHeight();
  }

  /** The wind before, and its turn. */
  @Override
  public String toString() {
    return before + ", turned by " + angle + " rad from " + start + " s on in " + duration + " s";
  }
}
