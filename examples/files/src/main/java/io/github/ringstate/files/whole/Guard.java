package io.github.ringstate.files.whole;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets a draft be written and moved to its place even if the virtual machine is told to end
 * meanwhile, as by an interrupt from the keyboard. A file system that takes too long is not waited
 * for: its draft is deleted.
 */
final class Guard implements AutoCloseable {

  private static final long PATIENCE = 250;

  /** Writes a draft and moves it. */
  @FunctionalInterface
  interface Step {
    /**
     * Writes and moves.
     *
     * @throws IOException if the system does not let it
     */
    void run() throws IOException;
  }

  private final ReentrantLock writing = new ReentrantLock();
  private final Path draft;
  private final Thread atTheEnd = new Thread(this::end);

  private Guard(Path draft) {
    this.draft = draft;
  }

  static Guard over(Path draft) {
    Guard guard = new Guard(draft);
    try {
      Runtime.getRuntime().addShutdownHook(guard.atTheEnd);
    } catch (IllegalStateException ending) {
      throw new CancellationException("the virtual machine ends");
    }
    return guard;
  }

  void whole(Step step) throws IOException {
    writing.lock();
    try {
      step.run();
    } finally {
      writing.unlock();
    }
  }

  /** Keeps the lock: nothing is begun any more while the machine ends. */
  private void end() {
    try {
      if (!writing.tryLock(PATIENCE, TimeUnit.MILLISECONDS)) {
        Files.deleteIfExists(draft);
      }
    } catch (InterruptedException | IOException ended) {
      // the machine ends here, and nobody is left to tell
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    try {
      Runtime.getRuntime().removeShutdownHook(atTheEnd);
    } catch (IllegalStateException ending) {
      // the end has begun and takes its course
    }
  }
}
