package io.github.ringstate.instructor;

import io.github.ringstate.instructor.delivery.StandardStream;
import io.github.ringstate.instructor.desk.Browser;
import java.util.Locale;
import java.util.stream.Stream;

/** How the tool was started, where it was given no arguments. */
final class Start {

  /** What a double click on the jar means; with no terminal nobody sees that it is still there. */
  static final String[] DESK = {"desk", "--idle=120"};

  private Start() {}

  /**
   * Whether the jar was opened from a desktop. Then no standard stream is a terminal and windows
   * can be shown, and on Windows the virtual machine is the one without a console. In a script one
   * of these is not so: a shell leaves its terminal to one of the streams, and what runs without
   * anybody, as in a batch queue, has no desktop.
   *
   * @return true if there is a desktop and nobody at a terminal
   */
  static boolean byDoubleClick() {
    boolean nobody =
        isWindows()
            ? isWithoutConsole()
            : Stream.of(StandardStream.values()).noneMatch(StandardStream::isTerminal);
    return nobody && Browser.isDesktop();
  }

  private static boolean isWindows() {
    return System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
  }

  /** The launcher that Windows takes for jars is {@code javaw}. */
  private static boolean isWithoutConsole() {
    return ProcessHandle.current()
        .info()
        .command()
        .map(command -> command.toLowerCase(Locale.ROOT).endsWith("javaw.exe"))
        .orElse(false);
  }
}
