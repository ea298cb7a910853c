package io.github.ringstate.files.error;

import org.jspecify.annotations.Nullable;

/** Why the tool does not do what it was asked: one sentence for the user, and the exit status. */
public final class Refusal extends RuntimeException {

  /** Exit status for a file that cannot be read or written, or holds a bad value. */
  public static final int FILE = 1;

  /** Exit status for a wrong option or value. */
  public static final int USAGE = 2;

  /** The middle of every message on a wrong value; what is allowed follows. */
  public static final String ALLOWED = "; allowed: ";

  private static final long serialVersionUID = 1L;
  private static final int LONGEST_ECHO = 80;

  private final int status;

  private Refusal(int status, String message, @Nullable Throwable cause) {
    super(message, cause);
    this.status = status;
  }

  /**
   * A value that an option does not take.
   *
   * @param option the option's name, for instance {@code --delays}
   * @param value what was given
   * @param allowed what is allowed
   * @return the refusal, with status {@link #USAGE}
   */
  public static Refusal option(String option, String value, String allowed) {
    return new Refusal(USAGE, option + " cannot be " + quoted(value) + ALLOWED + allowed, null);
  }

  /**
   * Options that contradict each other or the craft.
   *
   * @param message one sentence that names the options
   * @return the refusal, with status {@link #USAGE}
   */
  public static Refusal usage(String message) {
    return new Refusal(USAGE, message, null);
  }

  /**
   * A file that cannot be read or written.
   *
   * @param file the file, as the user named it
   * @param why what is wrong, following the file's name
   * @param cause what the system said, or null
   * @return the refusal, with status {@link #FILE}
   */
  public static Refusal file(String file, String why, @Nullable Throwable cause) {
    return new Refusal(FILE, printable(file) + " " + why, cause);
  }

  /**
   * Something wrong on a line of a file.
   *
   * @param file the file, as the user named it
   * @param line the line, from 1; 0 if it concerns no line
   * @param why what is wrong
   * @return the refusal, with status {@link #FILE}
   */
  public static Refusal line(String file, int line, String why) {
    String where = line > 0 ? ", line " + line + ": " : ": ";
    return new Refusal(FILE, printable(file) + where + why, null);
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
    String line = printable(text);
    return "'" + (line.length() > LONGEST_ECHO ? line.substring(0, LONGEST_ECHO) : line) + "'";
  }

  private static String printable(String text) {
    StringBuilder line = new StringBuilder();
    text.codePoints().forEach(c -> line.appendCodePoint(Character.isISOControl(c) ? '?' : c));
    return line.toString();
  }
}
