package io.github.ringstate.study.sweep;

import io.github.ringstate.study.OrderedWork;
import io.github.ringstate.study.Progress;
import java.util.Objects;
import java.util.concurrent.CancellationException;
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
    long[] next = {from};
    new OrderedWork(threads, progress)
        .run(
            (to - from + BLOCK - 1) / BLOCK,
            () ->
                (block, ended) -> {
                  long first = from + block * BLOCK;
                  return prepare.apply(sweep.rows(first, (int) Math.min(BLOCK, to - first), ended));
                },
            (T block) -> {
              sink.accept(block);
              next[0] = Math.min(next[0] + BLOCK, to);
              progress.flown(next[0] - from, to - from);
            });
  }
}
