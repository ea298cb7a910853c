package io.github.ringstate.quantity;

/**
 * A quantity's name, its unit and the range in which the library accepts it.
 *
 * @param name what people call it, for instance {@code pressure altitude}
 * @param unit the unit of both bounds and of every value that is checked
 * @param low the least value accepted, in {@code unit}
 * @param high the greatest value accepted, in {@code unit}; not below {@code low}
 */
public record Quantity(String name, Unit unit, double low, double high) {

  /** Checks that the range is one. */
  public Quantity {
    if (!(low <= high)) {
      throw new IllegalArgumentException(
          "the range of " + name + " is empty: " + low + " to " + high);
    }
  }

  /**
   * Lets a value pass that lies within the range.
   *
   * @param value the value, in this quantity's unit
   * @return the value, unchanged
   * @throws OutOfRangeException if the value is outside the range or not a number
   */
  public double check(double value) {
    if (!holds(value)) {
      throw new OutOfRangeException(this, value);
    }
    return value;
  }

  /**
   * Whether a value lies within the range.
   *
   * @param value the value, in this quantity's unit
   * @return true if it does; false for what is not a number
   */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }

  /**
   * The same quantity with another range.
   *
   * @param newLow the least value accepted, in this quantity's unit
   * @param newHigh the greatest value accepted, in this quantity's unit
   * @return the quantity with that range
   */
  public Quantity within(double newLow, double newHigh) {
    return new Quantity(name, unit, newLow, newHigh);
  }
}
