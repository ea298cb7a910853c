package io.github.ringstate.study.run;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;

/**
 * The wind at the height of a run.
 *
 * @param from where the wind comes from, rad clockwise from north; without meaning in calm air
 * @param speed mean wind speed, m/s
 * @param gust greatest wind speed, m/s, not below the mean
 * @param allowance air that moves from any direction beside that wind, and drift over the ground,
 *     m/s: {@link #ALLOWANCE} unless the crew knows better
 */
public record RunWind(double from, double speed, double gust, double allowance) {

  /** Where the wind comes from. */
  public static final Quantity FROM = new Quantity("wind direction", Unit.DEGREE, 0, 360);

  /** Winds and gusts that are accepted. */
  public static final Quantity SPEED = new Quantity("wind at the height flown", Unit.KNOT, 0, 100);

  /** Allowances that are accepted. */
  public static final Quantity ALLOWANCES =
      new Quantity("allowance for lulls and drift", Unit.KNOT, 0, 20);

  /**
   * The allowance unless another is given, m/s: 3 kt, below which a wind is called calm (FAA Order
   * JO 7110.65, paragraph 2-6-3, as quoted at second hand). That it covers the drift of a ground
   * speed held by eye as well is assumed.
   */
  public static final double ALLOWANCE = Unit.KNOT.toSi(3);

  /** Checks all numbers. */
  public RunWind {
    FROM.check(Unit.DEGREE.fromSi(from));
    SPEED.check(Unit.KNOT.fromSi(speed));
    SPEED.within(Unit.KNOT.fromSi(speed), SPEED.high()).check(Unit.KNOT.fromSi(gust));
    ALLOWANCES.check(Unit.KNOT.fromSi(allowance));
  }

  /**
   * Calm air.
   *
   * @param allowance what moves all the same, m/s
   * @return no wind but the allowance
   */
  public static RunWind calm(double allowance) {
    return new RunWind(0, 0, 0, allowance);
  }

  /**
   * Whether there is no wind but the allowance.
   *
   * @return true without gusts
   */
  public boolean isCalm() {
    return gust == 0;
  }

  /**
   * The least wind speed.
   *
   * @return as far below the mean as the gust is above it, m/s, at least 0 (assumed)
   */
  public double lull() {
    return Math.max(0, 2 * speed - gust);
  }

  /**
   * The direction of a run with the wind behind.
   *
   * @return the track, rad clockwise from north
   */
  public double downwind() {
    return from < Math.PI ? from + Math.PI : from - Math.PI;
  }
}
