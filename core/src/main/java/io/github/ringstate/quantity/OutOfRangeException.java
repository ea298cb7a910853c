package io.github.ringstate.quantity;

/** A value outside the range of its quantity; the message names value, bounds and unit. */
public final class OutOfRangeException extends IllegalArgumentException {

  /** The middle of every message; the quantity and its value stand before it, the range behind. */
  public static final String OUTSIDE = " is outside the range ";

  private static final long serialVersionUID = 1L;

  private final transient Quantity quantity;
  private final double value;

  /**
   * Creates the exception.
   *
   * @param quantity what was checked
   * @param value the value that failed, in the quantity's unit; may be NaN
   */
  public OutOfRangeException(Quantity quantity, double value) {
    super(
        quantity.name()
            + " "
            + withUnit(Double.toString(value), quantity)
            + OUTSIDE
            + plain(quantity.low())
            + " to "
            + withUnit(plain(quantity.high()), quantity));
    this.quantity = quantity;
    this.value = value;
  }

  /**
   * What was checked.
   *
   * @return the quantity with its range
   */
  public Quantity quantity() {
    return quantity;
  }

  /**
   * The value that failed.
   *
   * @return the value, in the quantity's unit; may be NaN
   */
  public double value() {
    return value;
  }

  private static String withUnit(String number, Quantity quantity) {
    String symbol = quantity.unit().symbol();
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  private static String plain(double bound) {
    return bound == Math.rint(bound) && Math.abs(bound) < 1e9
        ? Long.toString((long) bound)
        : Double.toString(bound);
  }
}
