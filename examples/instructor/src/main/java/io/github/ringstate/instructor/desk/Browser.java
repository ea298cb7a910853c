package io.github.ringstate.instructor.desk;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The browser of the person, if there is one. */
public final class Browser {

  /** Where a person's windows are, on systems that have them by X11 or Wayland. */
  private static final List<String> SCREENS = List.of("DISPLAY", "WAYLAND_DISPLAY");

  private Browser() {}

  /**
   * Opens an address; without a desktop or a browser nothing happens, for the address is printed.
   *
   * @param address the address
   */
  static void open(String address) {
    if (isDesktop()) {
      if (isDesktopOfJava()) {
        byDesktop(address);
      } else {
        byCommand(address);
      }
    }
  }

  /**
   * Whether windows can be shown at all.
   *
   * @return false without a screen, or where Java comes without its desktop classes
   */
  public static boolean isDesktop() {
    try {
      return isDesktopOfJava()
          ? !GraphicsEnvironment.isHeadless()
          : SCREENS.stream().anyMatch(name -> !System.getenv().getOrDefault(name, "").isEmpty());
    } catch (UnsatisfiedLinkError | NoClassDefFoundError noDesktopClasses) {
      return false;
    }
  }

  /**
   * Has drawings made without a screen. Where windows go over X11, Java asks its screen for the
   * typefaces of a drawing too, and cannot draw if that screen is named but does not answer.
   */
  public static void drawWithoutScreen() {
    if (!isDesktopOfJava() && System.getProperty("java.awt.headless") == null) {
      System.setProperty("java.awt.headless", "true");
    }
  }

  private static boolean isDesktopOfJava() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    return Stream.of("windows", "mac").anyMatch(system::startsWith);
  }

  private static void byDesktop(String address) {
    try {
      if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
        Desktop.getDesktop().browse(URI.create(address));
      }
    } catch (IOException | UnsupportedOperationException | UnsatisfiedLinkError none) {
      // the address is printed
    }
  }

  /** The command of freedesktop.org. */
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
