package io.github.ringstate.instructor.delivery;

import java.io.IOException;
import java.util.concurrent.TimeUnit;

/** Whether anybody watches a standard stream of the process. */
public enum StandardStream {
  /** Standard input. */
  INPUT("0"),
  /** Standard output. */
  OUTPUT("1"),
  /** Standard error. */
  ERROR("2");

  private static final long PATIENCE = 1;

  private final String number;

  StandardStream(String number) {
    this.number = number;
  }

  /**
   * Asks POSIX {@code test -t}: Java knows of standard input and output at most. Where there is no
   * such command, nobody is taken to watch.
   *
   * @return true if the stream is a terminal
   */
  public boolean isTerminal() {
    try {
      Process test = new ProcessBuilder("test", "-t", number).inheritIO().start();
      return test.waitFor(PATIENCE, TimeUnit.SECONDS) && test.exitValue() == 0;
    } catch (IOException noSuchCommand) {
      return false;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
