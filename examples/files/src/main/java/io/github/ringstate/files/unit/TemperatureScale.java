package io.github.ringstate.files.unit;

import io.github.ringstate.quantity.Unit;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Scales of temperature, exact by definition: 0 C is 273.15 K, 0 K is -459.67 F, and 1 K is 1.8 F.
 */
public enum TemperatureScale {
  /** Degrees Celsius. */
  CELSIUS("C", 1, Unit.ZERO_CELSIUS),
  /** Degrees Fahrenheit. */
  FAHRENHEIT("F", 1.8, 459.67),
  /** Kelvin. */
  KELVIN("K", 1, 0);

  private final String symbol;
  private final double degrees;
  private final double zero;

  TemperatureScale(String symbol, double degrees, double zero) {
    this.symbol = symbol;
    this.degrees = degrees;
    this.zero = zero;
  }

  /**
   * The scale as a person reads it.
   *
   * @return one letter
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The scale that a word names.
   *
   * @param word a letter, in any case, with or without a sign of degrees in front
   * @return the scale; empty if there is none of that name
   */
  public static Optional<TemperatureScale> named(String word) {
    String letter = word.startsWith("°") ? word.substring(1) : word;
    return Stream.of(values()).filter(scale -> scale.symbol.equalsIgnoreCase(letter)).findFirst();
  }

  /**
   * Converts a temperature on this scale.
   *
   * @param temperature the temperature, degrees of this scale
   * @return the temperature, K
   */
  public double toKelvin(double temperature) {
    return (temperature + zero) / degrees;
  }

  /**
   * Converts a temperature to this scale.
   *
   * @param kelvin the temperature, K
   * @return the temperature, degrees of this scale
   */
  public double fromKelvin(double kelvin) {
    return degrees * kelvin - zero;
  }

  /**
   * Converts a difference of temperatures.
   *
   * @param difference the difference, degrees of this scale
   * @return the difference, K
   */
  public double difference(double difference) {
    return difference / degrees;
  }
}
