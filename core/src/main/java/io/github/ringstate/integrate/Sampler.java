package io.github.ringstate.integrate;

import java.util.function.Consumer;

/**
 * Takes samples at equal steps of time, across all legs.
 *
 * <p>The samples lie at whole multiples of the step, whatever steps a propagator takes; the first
 * is at time zero, or the first thereafter if the first leg begins later.
 *
 * @param <V> the view of an instant
 */
public final class Sampler<V> {

  private final double step;
  private final Consumer<V> sink;
  private long next;

  /**
   * Creates a sampler that has taken nothing yet.
   *
   * @param step the time between samples, positive
   * @param sink takes each sample; the view is valid during the call only
   */
  public Sampler(double step, Consumer<V> sink) {
    if (!(step > 0)) {
      throw new IllegalArgumentException(
          "the step between samples must be positive, not " + step + " s");
    }
    this.step = step;
    this.sink = sink;
  }

  /** Passes over samples that would lie before a leg. */
  void begin(double start) {
    next = Math.max(next, (long) Math.ceil(start / step) - 1);
    while (due() < start) {
      next++;
    }
  }

  /**
   * When the next sample is due.
   *
   * @return the time
   */
  public double due() {
    return next * step;
  }

  /** Takes the sample that is due. */
  void take(V view) {
    sink.accept(view);
    next++;
  }
}
