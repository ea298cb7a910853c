package io.github.ringstate.instructor.sweep;

import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;

/**
 * Says how a run goes on if the virtual machine is told to end meanwhile, as by an interrupt from
 * the keyboard. It neither waits for the run nor touches its files, which can be gone on with
 * whenever the run ends.
 */
final class Interruption implements SweepWatch, AutoCloseable {

  private final ReentrantLock last = new ReentrantLock();
  private final Thread atTheEnd = new Thread(this::say);
  private final long count;
  private final Consumer<String> err;
  private volatile long kept;

  /**
   * Begins to listen, if the virtual machine does not end already.
   *
   * @param count how many rows there are to be
   * @param err takes what is said
   */
  Interruption(long count, Consumer<String> err) {
    this.count = count;
    this.err = err;
    try {
      Runtime.getRuntime().addShutdownHook(atTheEnd);
    } catch (IllegalStateException ending) {
      // nothing is flown yet, and nobody has to be told of it
    }
  }

  @Override
  public void kept(long rows) {
    kept = rows;
  }

  /** Keeps the lock, so that a run that is told to go on is not made whole meanwhile. */
  void say() {
    if (last.tryLock() && kept > 0) {
      err.accept(SweepMessages.SAY.interrupted(kept, count));
    }
  }

  /** From now on nothing is said: the run is at its end. */
  @Override
  public void close() {
    last.lock();
    try {
      Runtime.getRuntime().removeShutdownHook(atTheEnd);
    } catch (IllegalStateException ending) {
      // the end has begun and takes its course
    }
  }
}
