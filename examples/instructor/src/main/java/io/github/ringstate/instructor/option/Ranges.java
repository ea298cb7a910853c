package io.github.ringstate.instructor.option;

import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.files.unit.TemperatureScale;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Ranges in the units that options are given in. */
final class Ranges {

  private Ranges() {}

  /** From here on bounds in feet are whole, and from there on tens: nobody types 1640.4 ft. */
  private static final double WHOLE_FROM = 10;

  private static final double TENS_FROM = 1000;

  /**
   * A range in another unit, narrowed to one decimal, or to round feet, so that what is shown is
   * accepted.
   *
   * @param quantity the range
   * @param unit the unit wanted
   * @return the range in that unit
   */
  static Quantity in(Unit unit, Quantity quantity) {
    double low = unit.fromSi(quantity.unit().toSi(quantity.low()));
    double high = unit.fromSi(quantity.unit().toSi(quantity.high()));
    return new Quantity(
        quantity.name(),
        unit,
        round(low, unit, RoundingMode.CEILING),
        round(high, unit, RoundingMode.FLOOR));
  }

  /**
   * A range of temperatures in words.
   *
   * @param kelvin the range, in K
   * @param scale the scale wanted
   * @return the bounds on that scale, narrowed to one decimal
   */
  static String of(Quantity kelvin, TemperatureScale scale) {
    return RangeText.of(
        tenths(scale.fromKelvin(kelvin.low()), RoundingMode.CEILING),
        tenths(scale.fromKelvin(kelvin.high()), RoundingMode.FLOOR),
        scale.symbol());
  }

  private static double round(double value, Unit unit, RoundingMode rounding) {
    double size = Math.abs(value);
    if (unit != Unit.FOOT || size < WHOLE_FROM) {
      return tenths(value, rounding);
    }
    return new BigDecimal(value).setScale(size < TENS_FROM ? 0 : -1, rounding).doubleValue();
  }

  private static double tenths(double value, RoundingMode rounding) {
    return new BigDecimal(value).setScale(1, rounding).doubleValue();
  }
}
