package io.github.ringstate.analysis.continuation;

/** Newton's method found no solution near where it was sent. */
public final class NoSolutionException extends ArithmeticException {

  private static final long serialVersionUID = 1L;

  NoSolutionException(String message) {
    super(message);
  }

  NoSolutionException(String message, Throwable cause) {
    super(message);
    initCause(cause);
  }
}
