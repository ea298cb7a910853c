package io.github.ringstate.study.sweep;

/** An extension that cannot be used; the message is a sentence that names it and says why. */
public final class BadExtensionException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param extension the name of the extension, or of its class if it has none
   * @param problem what is wrong, following the name
   */
  public BadExtensionException(String extension, String problem) {
    super("the extension " + extension + " " + problem);
  }

  BadExtensionException(String extension, String problem, Throwable cause) {
    super("the extension " + extension + " " + problem, cause);
  }
}
