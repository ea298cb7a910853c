package io.github.ringstate.quantity;

/**
 * A part that a user plugged in gave what is not a finite number; the message names the part. That
 * is a fault of the part and never a result.
 */
public final class NotFiniteException extends IllegalArgumentException {

  /** The middle of every message; the part and what it was asked for stand before it. */
  public static final String NOT_FINITE = " is not a finite number: ";

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param part the part that was plugged in
   * @param asked what it was asked for, for instance {@code the velocity of}
   * @param value what it gave
   */
  public NotFiniteException(Object part, String asked, double value) {
    super(asked + " " + name(part) + NOT_FINITE + value);
  }

  /**
   * Lets a finite number pass.
   *
   * @param value what a part gave
   * @param asked what it was asked for
   * @param part the part
   * @return the value, unchanged
   * @throws NotFiniteException if it is not a number or infinite
   */
  public static double check(double value, String asked, Object part) {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new NotFiniteException(part, asked, value);
    }
    return value;
  }

  /** How a part says what it is; where it does not, the class that it was written in. */
  private static String name(Object part) {
    String said = part.toString();
    String type = part.getClass().getName();
    if (!said.startsWith(type)) {
      return said;
    }
    int lambda = type.indexOf("$$Lambda");
    return lambda < 0 ? type : "a lambda of " + type.substring(0, lambda);
  }
}
