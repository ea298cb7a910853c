package io.github.ringstate.instructor.progress;

import java.io.File;
import java.io.IOException;
import java.util.concurrent.TimeUnit;

/** Whether anybody watches standard error. */
final class StandardError {

  private static final long PATIENCE = 1;

  private StandardError() {}

  /**
   * Asks the system. Java can only tell whether all of standard input and output are a terminal, so
   * POSIX {@code test -t 2} is asked where there is one.
   *
   * @return true if standard error is a terminal
   */
  static boolean isTerminal() {
    if (File.separatorChar != '/') {
      return System.console() != null;
    }
    try {
      Process test = new ProcessBuilder("test", "-t", "2").inheritIO().start();
      return test.waitFor(PATIENCE, TimeUnit.SECONDS) && test.exitValue() == 0;
    } catch (IOException noSuchCommand) {
      return false;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
