package io.github.ringstate.dynamics;

/** A command that is not a number, or so great that it must have been given in degrees. */
public final class BadCommandException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param message one sentence with the command, its value and the bound
   */
  public BadCommandException(String message) {
    super(message);
  }

  /**
   * Says who gave the command.
   *
   * @param who the part that commanded, and when
   * @param cause what is wrong with the command
   */
  public BadCommandException(String who, BadCommandException cause) {
    super(who + ": " + cause.getMessage(), cause);
  }
}
