package io.github.ringstate.files.error;

import io.github.ringstate.files.text.Unprintable;
import org.jspecify.annotations.Nullable;

/**
 * Why the tool does not do what it was asked: one sentence for the user, which may be printed
 * anywhere, and the exit status.
 */
public final class UserError extends RuntimeException {

  /** Exit status for a file that cannot be read or written, or holds a bad value. */
  public static final int FILE = 1;

  /** Exit status for a wrong option or value. */
  public static final int USAGE = 2;

  /** The middle of every message on a wrong value; what is allowed follows. */
  public static final String ALLOWED = "; allowed: ";

  private static final long serialVersionUID = 1L;
  private static final int LONGEST_ECHO = 80;

  private final int status;

  private UserError(int status, String message, @Nullable Throwable cause) {
    super(Unprintable.replaced(message), cause);
    this.status = status;
  }

  /**
   * A value that an option does not take.
   *
   * @param option the option's name, for instance {@code --delays}
   * @param value what was given
   * @param allowed what is allowed
   * @return the user error, with status {@link #USAGE}
   */
  public static UserError option(String option, String value, String allowed) {
    return new UserError(USAGE, option + " cannot be " + quoted(value) + ALLOWED + allowed, null);
  }

  /**
   * Options that contradict each other or the craft.
   *
   * @param message one sentence that names the options
   * @return the user error, with status {@link #USAGE}
   */
  public static UserError usage(String message) {
    return new UserError(USAGE, message, null);
  }

  /**
   * Something that the machine lacks.
   *
   * @param message one sentence that names it
   * @param cause what failed for want of it
   * @return the user error, with status {@link #FILE}
   */
  public static UserError missing(String message, Throwable cause) {
    return new UserError(FILE, message, cause);
  }

  /**
   * A file that cannot be read or written.
   *
   * @param file the file, as the user named it
   * @param why what is wrong, following the file's name
   * @return the user error, with status {@link #FILE}
   */
  public static UserError file(String file, String why) {
    return file(file, why, null);
  }

  /**
   * A file that cannot be read or written.
   *
   * @param file the file, as the user named it
   * @param why what is wrong, following the file's name
   * @param cause what the system said, or null
   * @return the user error, with status {@link #FILE}
   */
  public static UserError file(String file, String why, @Nullable Throwable cause) {
    return new UserError(FILE, file + " " + why, cause);
  }

  /**
   * Something wrong on a line of a file.
   *
   * @param file the file, as the user named it
   * @param line the line, from 1; 0 if it concerns no line
   * @param why what is wrong
   * @return the user error, with status {@link #FILE}
   */
  public static UserError line(String file, int line, String why) {
    return new UserError(FILE, at(file, line) + why, null);
  }

  /**
   * How a sentence on a line of a file begins.
   *
   * @param file the file, as the user named it
   * @param line the line, from 1; 0 if it concerns no line
   * @return the file and the line, with a colon
   */
  public static String at(String file, int line) {
    return file + (line > 0 ? ", line " + line + ": " : ": ");
  }

  /**
   * The exit status.
   *
   * @return {@link #FILE} or {@link #USAGE}
   */
  public int status() {
    return status;
  }

  /**
   * A user's text as part of a message: in quotation marks, on one line and not too long.
   *
   * @param text the text
   * @return the quoted text
   */
  public static String quoted(String text) {
    String line = Unprintable.replaced(text);
    int end =
        line.offsetByCodePoints(0, Math.min(LONGEST_ECHO, line.codePointCount(0, line.length())));
    return "'" + line.substring(0, end) + "'";
  }
}
