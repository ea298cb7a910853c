package io.github.ringstate.files.unit;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;

/** In which units text, sheets and pictures speak. */
public enum UnitSystem {
  /** Feet, knots, feet per minute, kilograms, degrees Celsius. */
  AVIATION(
      "aviation",
      Unit.FOOT,
      Unit.KNOT,
      Unit.FOOT_PER_MINUTE,
      Unit.KILOGRAM,
      TemperatureScale.CELSIUS,
      Unit.HECTOPASCAL),
  /** Metres, metres per second, kilograms, degrees Celsius. */
  SI(
      "si",
      Unit.METRE,
      Unit.METRE_PER_SECOND,
      Unit.METRE_PER_SECOND,
      Unit.KILOGRAM,
      TemperatureScale.CELSIUS,
      Unit.HECTOPASCAL),
  /** Feet, knots, feet per minute, pounds, degrees Fahrenheit. */
  US(
      "us",
      Unit.FOOT,
      Unit.KNOT,
      Unit.FOOT_PER_MINUTE,
      Unit.POUND,
      TemperatureScale.FAHRENHEIT,
      Unit.INCH_OF_MERCURY);

  /** What a conversion between units leaves of a number that was typed with few decimals. */
  private static final double AS_TYPED = 1e-9;

  private final String label;
  private final Unit length;
  private final Unit speed;
  private final Unit verticalSpeed;
  private final Unit mass;
  private final TemperatureScale temperature;
  private final Unit pressure;

  UnitSystem(
      String label,
      Unit length,
      Unit speed,
      Unit verticalSpeed,
      Unit mass,
      TemperatureScale temperature,
      Unit pressure) {
    this.label = label;
    this.length = length;
    this.speed = speed;
    this.verticalSpeed = verticalSpeed;
    this.mass = mass;
    this.temperature = temperature;
    this.pressure = pressure;
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
   * How heights and losses are rounded.
   *
   * @return the steps, in the unit of heights
   */
  public HeightSteps steps() {
    return isMetric() ? HeightSteps.METRES : HeightSteps.FEET;
  }

  /**
   * Whether heights are in metres and speeds in metres per second.
   *
   * @return false for feet and the units of the cockpit
   */
  public boolean isMetric() {
    return length != Unit.FOOT;
  }

  /**
   * Scale of temperatures.
   *
   * @return the scale
   */
  public TemperatureScale temperature() {
    return temperature;
  }

  /**
   * A temperature.
   *
   * @param kelvin the temperature, K
   * @return tenths of a degree, with the scale
   */
  public String temperatureInWords(double kelvin) {
    return Decimals.fixed(temperature.fromKelvin(kelvin), 1) + " " + temperature.symbol();
  }

  /**
   * A speed without its unit.
   *
   * @param si the speed, m/s
   * @return whole knots or tenths of a metre per second
   */
  public String speed(double si) {
    return Decimals.fixed(speed.fromSi(si), isMetric() ? 1 : 0);
  }

  /**
   * A speed.
   *
   * @param si the speed, m/s
   * @return whole knots or tenths of a metre per second, with the unit
   */
  public String speedInWords(double si) {
    return speed(si) + " " + speed.symbol();
  }

  /**
   * A vertical speed without its unit.
   *
   * @param si the speed, m/s
   * @return tens of feet per minute or tenths of a metre per second
   */
  public String verticalSpeed(double si) {
    return isMetric()
        ? Decimals.fixed(si, 1)
        : Decimals.fixed(10 * Math.rint(verticalSpeed.fromSi(si) / 10), 0);
  }

  /**
   * A vertical speed.
   *
   * @param si the speed, m/s
   * @return tens of feet per minute or tenths of a metre per second, with the unit
   */
  public String verticalSpeedInWords(double si) {
    return verticalSpeed(si) + " " + verticalSpeed.symbol();
  }

  /**
   * A vertical speed without its unit, as fine as it is measured.
   *
   * @param si the speed, m/s
   * @return whole feet per minute or hundredths of a metre per second
   */
  public String fineVerticalSpeed(double si) {
    return Decimals.fixed(verticalSpeed.fromSi(si), isMetric() ? 2 : 0);
  }

  /**
   * A vertical speed, as fine as it is measured.
   *
   * @param si the speed, m/s
   * @return whole feet per minute or hundredths of a metre per second, with the unit
   */
  public String fineVerticalSpeedInWords(double si) {
    return fineVerticalSpeed(si) + " " + verticalSpeed.symbol();
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

  /**
   * A height.
   *
   * @param si the height, m
   * @return whole feet or metres, with the unit
   */
  public String lengthInWords(double si) {
    return length(si) + " " + length.symbol();
  }

  /**
   * A height needed, without its unit.
   *
   * @param si the height, m, not negative
   * @return the height in this system, rounded upwards by {@link #steps}
   */
  public String needed(double si) {
    return Decimals.fixed(up(si), 0);
  }

  /**
   * A height needed, rounded upwards no finer than it is known, without its unit.
   *
   * @param si the height, m, not negative
   * @param within how finely it is known, m
   * @return the height in this system
   */
  public String needed(double si, double within) {
    return Decimals.fixed(up(si, within), 0);
  }

  /**
   * Rounds a height upwards, no finer than it is known.
   *
   * @param si the height, m, not negative
   * @param within how finely it is known, m
   * @return the height in this system
   */
  public double up(double si, double within) {
    return steps().up(length.fromSi(si), length.fromSi(within));
  }

  /**
   * Rounds a height downwards, no finer than it is known.
   *
   * @param si the height, m, not negative
   * @param within how finely it is known, m
   * @return the height in this system
   */
  public double down(double si, double within) {
    return steps().down(length.fromSi(si), length.fromSi(within));
  }

  /**
   * Rounds a height upwards.
   *
   * @param si the height, m, not negative
   * @return the height in this system
   */
  public double up(double si) {
    return steps().up(length.fromSi(si));
  }

  /**
   * Rounds a height downwards.
   *
   * @param si the height, m, not negative
   * @return the height in this system
   */
  public double down(double si) {
    return steps().down(length.fromSi(si));
  }

  /**
   * A height lost.
   *
   * @param si the height, m, not negative
   * @return the height in this system, rounded by {@link #steps}, with the unit
   */
  public String lossInWords(double si) {
    return loss(si) + " " + length.symbol();
  }

  /**
   * A height lost, without its unit.
   *
   * @param si the height, m, not negative
   * @return the height in this system, rounded by {@link #steps}
   */
  public String loss(double si) {
    return Decimals.fixed(roundedLoss(si), 0);
  }

  /**
   * A height lost, rounded no finer than it is known, without its unit.
   *
   * @param si the height, m, not negative
   * @param within how finely it is known, m
   * @return the height in this system
   */
  public String loss(double si, double within) {
    return Decimals.fixed(steps().rounded(length.fromSi(si), length.fromSi(within)), 0);
  }

  /**
   * Rounds a height lost by {@link #steps}.
   *
   * @param si the height, m, not negative
   * @return the height in this system
   */
  public double roundedLoss(double si) {
    return steps().rounded(length.fromSi(si));
  }

  /**
   * A quantity that a user gave, as it was typed.
   *
   * @param unit the unit in which it was given
   * @param si the quantity in SI units
   * @return without needless decimals, with the unit of this system
   */
  public String typed(Unit unit, double si) {
    return given(unit, unit.fromSi(si));
  }

  /**
   * The same without the unit.
   *
   * @param unit the unit in which it was given
   * @param si the quantity in SI units
   * @return without needless decimals
   */
  public String typedNumber(Unit unit, double si) {
    return number(unit, unit.fromSi(si));
  }

  /**
   * A number that a user gave or a parameter holds, in the unit of the cockpit.
   *
   * @param unit its unit; one that is none of the cockpit's stays as it is
   * @param value the number
   * @return without needless decimals, with the unit of this system; a number that was converted
   *     has one decimal at most
   */
  public String given(Unit unit, double value) {
    return (number(unit, value) + " " + own(unit).symbol()).strip();
  }

  /**
   * The same without the unit.
   *
   * @param unit its unit
   * @param value the number
   * @return without needless decimals
   */
  public String number(Unit unit, double value) {
    double own = own(unit) == unit ? value : own(unit).fromSi(unit.toSi(value));
    boolean asItIs =
        own(unit) == unit
            && (Dimension.of(unit).isEmpty()
                || Math.abs(Decimals.rounded(value).doubleValue() - value) < AS_TYPED);
    return Decimals.brief(asItIs ? own : Math.rint(10 * own) / 10);
  }

  /**
   * The unit of this system for the quantities that are given in a unit.
   *
   * @param unit a unit
   * @return this system's; the same one if people use but one
   */
  public Unit own(Unit unit) {
    return switch (unit) {
      case KILOGRAM -> mass;
      case HECTOPASCAL -> pressure;
      case FOOT -> length;
      case KNOT -> speed;
      case FOOT_PER_MINUTE -> verticalSpeed;
      default -> unit;
    };
  }
}
