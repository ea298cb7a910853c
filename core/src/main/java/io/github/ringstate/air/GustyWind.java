package io.github.ringstate.air;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.util.FastMath;

/** A mean wind with gusts added to it, the same gust at every place at a time. */
public final class GustyWind extends MadeOf implements WindField {

  private static final Quantity DIRECTION = new Quantity("gust direction", Unit.DEGREE, -720, 720);

  private final WindField mean;
  private final Gusts gusts;
  private final double directionFrom;
  private final double cosine;
  private final double sine;

  private GustyWind(WindField mean, Gusts gusts, double directionFrom) {
    super(mean, gusts, directionFrom);
    this.mean = mean;
    this.directionFrom = directionFrom;
    this.gusts = gusts;
    this.cosine = -FastMath.cos(directionFrom);
    this.sine = -FastMath.sin(directionFrom);
  }

  /**
   * Adds gusts to a wind.
   *
   * @param mean the mean wind
   * @param gusts the gusts
   * @param directionFrom direction that the mean wind comes from, rad clockwise from north, within
   *     two turns of it; {@link Gusts#along} blows from there
   * @return the wind with gusts
   * @throws io.github.ringstate.quantity.OutOfRangeException if the direction is outside its range
   *     or not a number
   */
  public static GustyWind of(WindField mean, Gusts gusts, double directionFrom) {
    DIRECTION.check(Unit.DEGREE.fromSi(directionFrom));
    return new GustyWind(mean, gusts, directionFrom);
  }

  @Override
  public void velocity(double time, double north, double east, double height, double[] result) {
    mean.velocity(time, north, east, height, result);
    double along = gusts.along(time);
    double across = gusts.across(time);
    result[0] += along * cosine - across * sine;
    result[1] += along * sine + across * cosine;
    result[2] += gusts.vertical(time);
  }

  @Override
  public boolean variesWithHeight() {
    return mean.variesWithHeight();
  }

  /** The mean wind and the gusts. */
  @Override
  public String toString() {
    return mean + ", with " + gusts + " from " + directionFrom + " rad";
  }
}
