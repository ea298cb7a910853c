package io.github.ringstate.instructor.desk;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.net.URI;
import java.util.List;

/** The browser of the person, if there is one. */
public final class Browser {

  private Browser() {}

  /**
   * Opens an address; without a desktop or a browser nothing happens, for the address is printed.
   *
   * @param address the address
   */
  static void open(String address) {
    if (isDesktop() && !byDesktop(address)) {
      byCommand(address);
    }
  }

  /**
   * Whether windows can be shown at all.
   *
   * @return false without a screen, or where Java comes without its desktop classes
   */
  public static boolean isDesktop() {
    try {
      return !GraphicsEnvironment.isHeadless();
    } catch (UnsatisfiedLinkError | NoClassDefFoundError noDesktopClasses) {
      return false;
    }
  }

  private static boolean byDesktop(String address) {
    try {
      if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
        Desktop.getDesktop().browse(URI.create(address));
        return true;
      }
    } catch (IOException | UnsupportedOperationException | UnsatisfiedLinkError none) {
      // tried by a command
    }
    return false;
  }

  /** Where the desktop is unknown to Java there may still be the command of freedesktop.org. */
  private static void byCommand(String address) {
    try {
      new ProcessBuilder(List.of("xdg-open", address))
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException none) {
      // the address is printed
    }
  }
}
