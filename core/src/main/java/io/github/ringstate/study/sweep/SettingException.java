package io.github.ringstate.study.sweep;

import io.github.ringstate.quantity.Quantity;

/** Something in a sweep that cannot be: the message names the setting, the value and the range. */
public final class SettingException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String key;
  private final String problem;
  private final String allowed;

  /**
   * Creates the exception.
   *
   * @param key the setting, for instance {@code craft.mass_kg}; may be a table, {@code sample}
   * @param problem what is wrong, following the key
   * @param allowed what is allowed
   */
  public SettingException(String key, String problem, String allowed) {
    super(key + " " + problem + "; allowed: " + allowed);
    this.key = key;
    this.problem = problem;
    this.allowed = allowed;
  }

  static SettingException cannotBe(String key, Object value, String allowed) {
    return new SettingException(key, "cannot be '" + value + "'", allowed);
  }

  /** The range of a quantity in words, for instance {@code 200 to 20000 kg}. */
  static String range(Quantity quantity) {
    String unit = quantity.unit().symbol();
    return plain(quantity.low())
        + " to "
        + plain(quantity.high())
        + (unit.isEmpty() ? "" : " " + unit);
  }

  private static String plain(double bound) {
    return bound == Math.rint(bound) && Math.abs(bound) < 1e15
        ? Long.toString((long) bound)
        : Double.toString(bound);
  }

  /**
   * The setting.
   *
   * @return its key
   */
  public String key() {
    return key;
  }

  /**
   * What is wrong.
   *
   * @return a part of a sentence that follows the key
   */
  public String problem() {
    return problem;
  }

  /**
   * What is allowed.
   *
   * @return a part of a sentence
   */
  public String allowed() {
    return allowed;
  }
}
