package io.github.ringstate.quantity;

/** Values that are each within their range, but contradict each other; the message names them. */
public final class IncompatibleValuesException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param message one sentence with the values, what is asked of them and their unit
   */
  public IncompatibleValuesException(String message) {
    super(message);
  }
}
