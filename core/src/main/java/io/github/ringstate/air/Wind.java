package io.github.ringstate.air;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.util.FastMath;

/**
 * A uniform, steady, level wind, held as the velocity of the air over the ground.
 *
 * <p>Meteorology names a wind after where it comes from: a wind from the north (direction 0) moves
 * the air southward, so {@code north} is negative.
 *
 * @param north velocity of the air toward north, m/s, -100 to 100
 * @param east velocity of the air toward east, m/s, -100 to 100
 */
public record Wind(double north, double east) implements WindField {

  private static final Quantity SPEED = new Quantity("wind speed", Unit.METRE_PER_SECOND, 0, 100);
  private static final Quantity NORTH =
      new Quantity("wind toward north", Unit.METRE_PER_SECOND, -100, 100);
  private static final Quantity EAST =
      new Quantity("wind toward east", Unit.METRE_PER_SECOND, -100, 100);
  private static final Quantity DIRECTION = new Quantity("wind direction", Unit.DEGREE, -720, 720);
  private static final Quantity TRACK = new Quantity("track", Unit.DEGREE, -720, 720);

  /** No wind. */
  public static final Wind CALM = new Wind(0, 0);

  /**
   * Checks both components.
   *
   * @throws io.github.ringstate.quantity.OutOfRangeException if a component is outside its range or
   *     not a number
   */
  public Wind {
    // adding zero turns -0.0 into 0.0, so that every calm equals CALM
    north = NORTH.check(north) + 0.0;
    east = EAST.check(east) + 0.0;
  }

  /**
   * The wind that a report gives as direction and speed.
   *
   * @param directionFrom direction that the wind comes from, rad clockwise from north, within two
   *     turns of it
   * @param speed wind speed, m/s, 0 to 100
   * @return the wind
   * @throws io.github.ringstate.quantity.OutOfRangeException if an argument is outside its range or
   *     not a number
   */
  public static Wind from(double directionFrom, double speed) {
    DIRECTION.check(Unit.DEGREE.fromSi(directionFrom));
    SPEED.check(speed);
    return new Wind(-speed * FastMath.cos(directionFrom), -speed * FastMath.sin(directionFrom));
  }

  /**
   * The wind speed.
   *
   * @return the speed of the air over the ground, m/s
   */
  public double speed() {
    return Math.sqrt(north * north + east * east);
  }

  /**
   * The direction that the wind comes from.
   *
   * @return the direction, rad clockwise from north, at least 0 and below 2 pi; 0 if it is calm
   */
  public double directionFrom() {
    if (north == 0 && east == 0) {
      return 0;
    }
    double angle = FastMath.atan2(-east, -north);
    double turned = angle < 0 ? angle + 2 * Math.PI : angle;
    // a tiny negative angle plus a turn rounds to a whole turn
    return turned < 2 * Math.PI ? turned + 0.0 : 0;
  }

  /**
   * The tailwind on a track.
   *
   * @param track direction flown, rad clockwise from north, within two turns of it
   * @return the component of the wind along the track, m/s; positive from behind
   * @throws io.github.ringstate.quantity.OutOfRangeException if the track is outside its range or
   *     not a number
   */
  public double along(double track) {
    TRACK.check(Unit.DEGREE.fromSi(track));
    return north * FastMath.cos(track) + east * FastMath.sin(track);
  }

  /**
   * The crosswind on a track.
   *
   * @param track direction flown, rad clockwise from north, within two turns of it
   * @return the component of the wind toward the right of the track, m/s; positive from the left
   * @throws io.github.ringstate.quantity.OutOfRangeException if the track is outside its range or
   *     not a number
   */
  public double across(double track) {
    TRACK.check(Unit.DEGREE.fromSi(track));
    return east * FastMath.cos(track) - north * FastMath.sin(track);
  }

  @Override
  public void velocity(double time, double northOf, double eastOf, double height, double[] result) {
    result[0] = north;
    result[1] = east;
    result[2] = 0;
  }

  @Override
  public boolean variesWithHeight() {
    return false;
  }

  /** Both components. */
  @Override
  public String toString() {
    return "wind toward north " + north + " m/s, toward east " + east + " m/s";
  }
}
