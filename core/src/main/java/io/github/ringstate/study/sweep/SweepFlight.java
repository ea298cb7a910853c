package io.github.ringstate.study.sweep;

import io.github.ringstate.study.Progress;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Flies a sweep over several threads and hands its rows on in the order of their index, a block at
 * a time. No more than a few blocks are held at once, however many points there are.
 *
 * @param sweep what to fly
 * @param threads how many threads fly, 1 to {@link #MOST_THREADS}
 */
public record SweepFlight(Sweep sweep, int threads) {

  /** Points of a block, but for the last one. */
  public static final int BLOCK = 1024;

  /** The most threads that are accepted. */
  public static final int MOST_THREADS = 256;

  /** Blocks in flight for each thread, so that none waits while the sink is busy. */
  private static final int AHEAD = 4;

  /** Checks the number of threads. */
  public SweepFlight {
    if (threads < 1 || threads > MOST_THREADS) {
      throw new IllegalArgumentException(
          "a sweep takes 1 to " + MOST_THREADS + " threads, not " + threads);
    }
  }

  /**
   * Flies some of the points, or all.
   *
   * @param from the first point
   * @param to the one behind the last
   * @param sink takes the rows, in order, called on this thread
   * @param progress hears how many of these points have come out, and may end it
   * @throws CancellationException if the listener ended it, or the thread was interrupted
   */
  public void fly(long from, long to, Consumer<Rows> sink, Progress progress) {
    fly(from, to, Function.identity(), sink, progress);
  }

  /**
   * Flies some of the points, or all, and prepares blocks of rows on the threads that flew them.
   *
   * @param from the first point
   * @param to the one behind the last
   * @param prepare what is done with a block on the thread that flew it, in any order
   * @param sink takes what was prepared, in order, called on this thread
   * @param progress hears how many of these points have come out, and may end it
   * @param <T> what a block is prepared into
   * @throws CancellationException if the listener ended it, or the thread was interrupted
   */
  public <T> void fly(
      long from, long to, Function<Rows, T> prepare, Consumer<T> sink, Progress progress) {
    Objects.checkFromToIndex(from, to, sweep.count());
    AtomicBoolean ended = new AtomicBoolean();
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      Deque<Block<T>> ahead = new ArrayDeque<>();
      long next = from;
      while (next < to || !ahead.isEmpty()) {
        while (next < to && ahead.size() < threads * AHEAD) {
          long first = next;
          int size = (int) Math.min(BLOCK, to - first);
          next += size;
          ForkJoinTask<T> task =
              pool.submit(
                  () ->
                      prepare.apply(
                          sweep.rows(first, size, () -> ended.get() || progress.cancelled())));
          ahead.add(new Block<>(task, next));
        }
        Block<T> block = ahead.remove();
        sink.accept(result(block.task()));
        progress.flown(block.end() - from, to - from);
      }
    } finally {
      ended.set(true);
      pool.shutdownNow();
    }
  }

  private record Block<T>(ForkJoinTask<T> task, long end) {}

  private static <T> T result(ForkJoinTask<T> task) {
    try {
      return task.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw cancelled(interrupted);
    } catch (ExecutionException failed) {
      for (Throwable cause = failed; cause != null; cause = cause.getCause()) {
        if (cause instanceof CancellationException) {
          throw cancelled(cause);
        }
      }
      throw new IllegalStateException("a block of the sweep could not be made", failed);
    }
  }

  private static CancellationException cancelled(Throwable cause) {
    CancellationException ended = new CancellationException("the sweep was ended");
    ended.initCause(cause);
    return ended;
  }
}
