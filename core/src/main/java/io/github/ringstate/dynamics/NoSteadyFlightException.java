package io.github.ringstate.dynamics;

/**
 * A craft cannot fly steadily as it was asked to, for instance hover in thin air: a property of the
 * craft and the air, not a mistake in a program.
 */
public final class NoSteadyFlightException extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception where a limit stands against a steady flight that was found.
   *
   * @param message one sentence with the craft, the limit and what would be needed
   */
  public NoSteadyFlightException(String message) {
    super(message);
  }

  /**
   * Creates the exception.
   *
   * @param message one sentence with the craft and its speeds, m/s
   * @param cause what the search for the steady flight ended with
   */
  public NoSteadyFlightException(String message, Throwable cause) {
    super(message, cause);
  }
}
