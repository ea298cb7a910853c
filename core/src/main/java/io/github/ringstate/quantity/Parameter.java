package io.github.ringstate.quantity;

/**
 * A number that a user may set: its quantity, the value it has unless set, and where that comes
 * from.
 *
 * @param quantity name, unit and range
 * @param standard the value unless set, in the quantity's unit
 * @param origin one sentence: a source, or that the value is fitted, assumed or invented
 */
public record Parameter(Quantity quantity, double standard, String origin) {

  /** Checks that the standard value lies in the range. */
  public Parameter {
    quantity.check(standard);
  }

  /**
   * Creates a parameter.
   *
   * @param name what people call it
   * @param unit the unit of the numbers that follow
   * @param low the least value accepted
   * @param high the greatest value accepted
   * @param standard the value unless set
   * @param origin one sentence on where the standard value comes from
   * @return the parameter
   */
  public static Parameter of(
      String name, Unit unit, double low, double high, double standard, String origin) {
    return new Parameter(new Quantity(name, unit, low, high), standard, origin);
  }

  /**
   * The parameter's name.
   *
   * @return the name of its quantity
   */
  public String name() {
    return quantity.name();
  }

  /**
   * The parameter's unit.
   *
   * @return the unit of its quantity
   */
  public Unit unit() {
    return quantity.unit();
  }

  /**
   * The parameter as a key in a file: its name with underscores, then the suffix of its unit.
   *
   * @return for instance {@code exit_airspeed_kt}
   */
  public String key() {
    String stem = name().replace(' ', '_').replace('-', '_');
    return unit().suffix().isEmpty() ? stem : stem + "_" + unit().suffix();
  }
}
