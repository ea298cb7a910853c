package io.github.ringstate.study;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Does something for each of a range of samples, on as many threads as the pool has that the caller
 * works in, the caller being one of them.
 *
 * <p>Every thread takes the next sample that nobody has taken. So no thread waits for another
 * longer than one sample takes: a caller that waits in a pool does not hear an interruption (the
 * pool takes the flag down until it is done).
 */
final class SampleFlights {

  private SampleFlights() {}

  /**
   * Does it.
   *
   * @param from the first sample
   * @param to the sample after the last
   * @param work makes, for each thread, what it does with the samples that it takes; the first
   *     exception that is thrown keeps further samples from being begun, and is thrown once those
   *     under way have ended
   */
  static void each(int from, int to, Supplier<IntConsumer> work) {
    AtomicInteger next = new AtomicInteger(from);
    AtomicReference<@Nullable RuntimeException> failure = new AtomicReference<>();
    IntStream.range(0, threads())
        .parallel()
        .forEach(
            thread -> {
              try {
                IntConsumer flight = work.get();
                while (failure.get() == null) {
                  int sample = next.getAndIncrement();
                  if (sample >= to) {
                    return;
                  }
                  flight.accept(sample);
                }
              } catch (RuntimeException thrown) {
                failure.compareAndSet(null, thrown);
              }
            });
    RuntimeException thrown = failure.get();
    if (thrown != null) {
      throw thrown;
    }
  }

  private static int threads() {
    ForkJoinPool pool = ForkJoinTask.getPool();
    return pool == null ? ForkJoinPool.getCommonPoolParallelism() + 1 : pool.getParallelism();
  }
}
