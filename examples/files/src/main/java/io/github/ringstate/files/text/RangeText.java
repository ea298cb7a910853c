package io.github.ringstate.files.text;

import io.github.ringstate.quantity.Quantity;
import java.math.BigDecimal;

/** Ranges in words. */
public final class RangeText {

  private RangeText() {}

  /**
   * The range of a quantity.
   *
   * @param quantity the quantity
   * @return the bounds with their unit, for instance {@code 0 to 60 kt}
   */
  public static String of(Quantity quantity) {
    return of(quantity.low(), quantity.high(), quantity.unit().symbol());
  }

  /**
   * A range.
   *
   * @param low the lower bound
   * @param high the upper bound
   * @param symbol the unit of both; empty for a pure number
   * @return the bounds with their unit
   */
  public static String of(double low, double high, String symbol) {
    String bounds = plain(low) + " to " + plain(high);
    return symbol.isEmpty() ? bounds : bounds + " " + symbol;
  }

  private static String plain(double bound) {
    return BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString();
  }
}
