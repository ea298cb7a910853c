package io.github.ringstate.study;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Work cut in pieces. Several threads do the pieces; the results come out on the calling thread, in
 * the order of the pieces. No more than a few results for each thread are held at once.
 *
 * <p>The first piece in order that throws ends the work with what it threw, whatever the number of
 * threads. The work also ends with a {@link CancellationException} if the listener ends it or the
 * calling thread is interrupted, which then stays interrupted. When the work has ended, no piece is
 * under way.
 *
 * @param threads how many threads do the pieces, at least 1
 * @param progress asked whether to end the work; what has been done is for the pieces to say
 */
public record OrderedWork(int threads, Progress progress) {

  /** Pieces begun or waiting for each thread, so that none waits while a result is taken. */
  private static final int AHEAD = 4;

  /**
   * Does pieces, one at a time.
   *
   * @param <T> what a piece gives
   */
  @FunctionalInterface
  public interface Worker<T> {

    /**
     * Does one piece.
     *
     * @param number which one, from 0
     * @param ended whether the work has ended, so that a long piece need not be done; such a piece
     *     throws a {@link CancellationException}
     * @return what it gives
     */
    T piece(long number, BooleanSupplier ended);
  }

  /** Checks the number of threads. */
  public OrderedWork {
    if (threads < 1) {
      throw new IllegalArgumentException("work takes at least 1 thread, not " + threads);
    }
  }

  /**
   * Work on as many threads as the fork-join pool has that the caller runs in; outside of any, on
   * as many as the common pool and its caller.
   *
   * @param progress asked whether to end the work
   * @return the work
   */
  public static OrderedWork of(Progress progress) {
    ForkJoinPool pool = ForkJoinTask.getPool();
    return new OrderedWork(
        pool == null ? ForkJoinPool.getCommonPoolParallelism() + 1 : pool.getParallelism(),
        progress);
  }

  /**
   * Does the work.
   *
   * @param pieces how many pieces there are
   * @param workers makes a worker for each thread
   * @param sink takes the results, in order, on the calling thread
   * @param <T> what a piece gives
   * @throws CancellationException if the listener ended it, or the calling thread was interrupted
   */
  public <T> void run(
      long pieces, Supplier<? extends Worker<T>> workers, Consumer<? super T> sink) {
    Thread caller = Thread.currentThread();
    AtomicBoolean stopped = new AtomicBoolean();
    BooleanSupplier ended = () -> stopped.get() || caller.isInterrupted() || progress.cancelled();
    Pieces<T> all = new Pieces<>(workers, ended);
    ExecutorService pool =
        Executors.newFixedThreadPool((int) Math.max(1, Math.min(pieces, threads)));
    try {
      Deque<Future<T>> ahead = new ArrayDeque<>();
      long next = 0;
      while (next < pieces || !ahead.isEmpty()) {
        while (next < pieces && ahead.size() < threads * AHEAD) {
          long number = next++;
          ahead.add(pool.submit(() -> all.make(number)));
        }
        sink.accept(ahead.remove().get());
      }
    } catch (InterruptedException interrupted) {
      caller.interrupt();
      throw cancelled();
    } catch (ExecutionException failed) {
      throw thrown(failed);
    } finally {
      stopped.set(true);
      pool.shutdown();
      await(pool);
    }
  }

  private static final class Pieces<T> {

    private final Supplier<? extends Worker<T>> workers;
    private final BooleanSupplier ended;
    private final Queue<Worker<T>> idle = new ConcurrentLinkedQueue<>();
    private final AtomicLong firstFailed = new AtomicLong(Long.MAX_VALUE);

    Pieces(Supplier<? extends Worker<T>> workers, BooleanSupplier ended) {
      this.workers = workers;
      this.ended = ended;
    }

    T make(long number) {
      // pieces before one that failed are done all the same: what the first of them throws counts
      if (number > firstFailed.get() || ended.getAsBoolean()) {
        throw cancelled();
      }
      try {
        Worker<T> kept = idle.poll();
        Worker<T> worker = kept == null ? workers.get() : kept;
        T made = worker.piece(number, ended);
        idle.add(worker);
        return made;
      } catch (RuntimeException | Error failure) {
        firstFailed.accumulateAndGet(number, Math::min);
        throw failure;
      }
    }
  }

  private static CancellationException cancelled() {
    return new CancellationException("the work was ended");
  }

  private static RuntimeException thrown(ExecutionException failed) {
    if (failed.getCause() instanceof Error error) {
      throw error;
    }
    return failed.getCause() instanceof RuntimeException thrown
        ? thrown
        : new IllegalStateException(failed);
  }

  private static void await(ExecutorService pool) {
    boolean interrupted = false;
    while (!pool.isTerminated()) {
      try {
        pool.awaitTermination(1, TimeUnit.MINUTES);
      } catch (InterruptedException again) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
