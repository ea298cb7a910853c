package io.github.ringstate.instructor;

import io.github.ringstate.files.error.UserError;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** What the machine or its Java lacks, in a sentence for the user. */
final class Shortage {

  /** What to say where the memory has run out. */
  static final String NO_MEMORY =
      "there is not enough memory for this; java -Xmx512m -jar ringstate.jar gives it more";

  private Shortage() {}

  /**
   * What to say of an error of the virtual machine.
   *
   * @param error the error
   * @return one sentence that names what is missing
   */
  static UserError of(Error error) {
    Throwable root = root(error);
    if (root instanceof OutOfMemoryError) {
      return UserError.missing(NO_MEMORY, error);
    }
    if (root instanceof StackOverflowError) {
      return UserError.missing(
          "the stack of this Java is too small; java -Xss1m -jar ringstate.jar gives it more",
          error);
    }
    if (root instanceof IOException) {
      return UserError.missing(
          "fonts cannot be read for want of a temporary folder that can be written to;"
              + " -Djava.io.tmpdir="
              + System.getProperty("java.io.tmpdir")
              + " cannot",
          error);
    }
    if (drawing(error)) {
      return UserError.missing(
          "this Java cannot draw: "
              + root
              + "; it needs the libraries freetype and fontconfig and one font, or take --format"
              + " text, csv or json",
          error);
    }
    return UserError.missing("this Java cannot run the tool: " + root, error);
  }

  private static Throwable root(Throwable error) {
    Throwable root = error;
    Throwable cause = root.getCause();
    while (cause != null && cause != root) {
      root = cause;
      cause = root.getCause();
    }
    return root;
  }

  /** Whether it happened in the packages that draw. */
  private static boolean drawing(@Nullable Throwable error) {
    for (Throwable e = error; e != null; e = e.getCause()) {
      for (StackTraceElement element : e.getStackTrace()) {
        String name = element.getClassName();
        if (name.startsWith("java.awt.") || name.startsWith("sun.font.")) {
          return true;
        }
      }
    }
    return false;
  }
}
