package io.github.ringstate.flight;

import java.util.function.BiConsumer;

/**
 * Takes samples of a flight at equal steps of time, across all its legs.
 *
 * <p>The samples lie at whole multiples of the step, whatever steps the integrator takes; the first
 * is at time zero, or the first thereafter if the first leg begins later.
 */
public final class History {

  private final double step;
  private final BiConsumer<String, Motion> sink;
  private long next;
  private String phase = "";

  /**
   * Creates a history that nothing has been taken for yet.
   *
   * @param step the time between samples, s; positive
   * @param sink takes each sample with the name of its phase; the motion is valid during the call
   *     only
   */
  public History(double step, BiConsumer<String, Motion> sink) {
    if (!(step > 0)) {
      throw new IllegalArgumentException(
          "the step of a history must be positive, not " + step + " s");
    }
    this.step = step;
    this.sink = sink;
  }

  /**
   * Passes over samples that would lie before a leg.
   *
   * @param start when the leg begins, s since the flight began
   */
  public void begin(double start) {
    next = Math.max(next, (long) Math.ceil(start / step) - 1);
    while (due() < start) {
      next++;
    }
  }

  /**
   * Names the phase of the samples that follow.
   *
   * @param name the phase, for people
   */
  public void phase(String name) {
    phase = name;
  }

  /**
   * When the next sample is due.
   *
   * @return the time, s since the flight began
   */
  public double due() {
    return next * step;
  }

  /**
   * Takes the sample that is due.
   *
   * @param motion the motion at {@link #due}
   */
  public void take(Motion motion) {
    sink.accept(phase, motion);
    next++;
  }
}
