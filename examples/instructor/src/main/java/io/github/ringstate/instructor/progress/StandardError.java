package io.github.ringstate.instructor.progress;

import java.io.IOException;
import java.util.concurrent.TimeUnit;

/** Whether anybody watches standard error. */
final class StandardError {

  private static final long PATIENCE = 1;

  private StandardError() {}

  /**
   * Asks POSIX {@code test -t 2}: Java knows of standard input and output at most. Where there is
   * no such command, nobody is taken to watch.
   *
   * @return true if standard error is a terminal
   */
  static boolean isTerminal() {
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
