package io.github.ringstate.study;

import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;

/** Pools of a number of threads. */
public final class Workers {

  private Workers() {}

  /** What comes of a piece of work in a pool of its own. */
  public static <T> T with(int threads, Callable<T> work) throws Exception {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(work).get();
    } finally {
      pool.shutdown();
    }
  }
}
