package io.github.ringstate.instructor.desk;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Threads for requests. Whoever has not shown the secret yet waits among so many; each newcomer
 * beyond them takes the place of the one that has been read for longest, so that requests which
 * trickle in keep nobody else out. Those that are let in are bounded as well.
 */
final class Readers implements Executor, AutoCloseable {

  /** Requests that are read at once before they are let in; a page has a few. */
  static final int MOST = 32;

  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final Set<Thread> reading = new LinkedHashSet<>();
  private final Set<Thread> admitted = new HashSet<>();

  @Override
  public void execute(Runnable request) {
    threads.execute(() -> read(request));
  }

  private void read(Runnable request) {
    synchronized (reading) {
      if (reading.size() >= MOST) {
        Thread longest = reading.iterator().next();
        reading.remove(longest);
        longest.interrupt(); // which closes the channel that it reads from
      }
      reading.add(Thread.currentThread());
    }
    try {
      request.run();
    } finally {
      synchronized (reading) {
        reading.remove(Thread.currentThread());
        admitted.remove(Thread.currentThread());
        Thread.interrupted(); // what concerned this request is not for the next
      }
    }
  }

  /**
   * The request on this thread has shown the secret: nobody takes its place.
   *
   * @throws Refused if as many are under way
   */
  void admit() throws Refused {
    synchronized (reading) {
      reading.remove(Thread.currentThread());
      if (admitted.size() >= MOST) {
        throw new Refused(Refused.BUSY, "more than " + MOST + " requests are under way");
      }
      admitted.add(Thread.currentThread());
    }
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
