package io.github.ringstate.instructor.sheet;

import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.quantity.Unit;

/** In which units a sheet speaks. */
public enum UnitSystem {
  /** Feet, knots, feet per minute. */
  AVIATION("aviation", Unit.FOOT, Unit.KNOT, Unit.FOOT_PER_MINUTE, 0),
  /** Metres and metres per second. */
  SI("si", Unit.METRE, Unit.METRE_PER_SECOND, Unit.METRE_PER_SECOND, 1);

  private final String label;
  private final Unit length;
  private final Unit speed;
  private final Unit verticalSpeed;
  private final int speedDecimals;

  UnitSystem(String label, Unit length, Unit speed, Unit verticalSpeed, int speedDecimals) {
    this.label = label;
    this.length = length;
    this.speed = speed;
    this.verticalSpeed = verticalSpeed;
    this.speedDecimals = speedDecimals;
  }

  /**
   * The system's name.
   *
   * @return one lower-case word
   */
  public String label() {
    return label;
  }

  /**
   * Unit of heights and losses.
   *
   * @return the unit
   */
  public Unit length() {
    return length;
  }

  /**
   * Unit of airspeed, ground speed and wind.
   *
   * @return the unit
   */
  public Unit speed() {
    return speed;
  }

  /**
   * Unit of climb and descent.
   *
   * @return the unit
   */
  public Unit verticalSpeed() {
    return verticalSpeed;
  }

  /**
   * A speed without its unit.
   *
   * @param si the speed, m/s
   * @return whole knots or tenths of a metre per second
   */
  public String speed(double si) {
    return Decimals.fixed(speed.fromSi(si), speedDecimals);
  }

  /**
   * A vertical speed without its unit.
   *
   * @param si the speed, m/s
   * @return tens of feet per minute or tenths of a metre per second
   */
  public String verticalSpeed(double si) {
    return this == AVIATION
        ? Decimals.fixed(10 * Math.rint(verticalSpeed.fromSi(si) / 10), 0)
        : Decimals.fixed(si, 1);
  }

  /**
   * A height without its unit.
   *
   * @param si the height, m
   * @return whole feet or metres
   */
  public String length(double si) {
    return Decimals.fixed(length.fromSi(si), 0);
  }
}
