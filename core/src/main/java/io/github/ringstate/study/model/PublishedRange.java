package io.github.ringstate.study.model;

import io.github.ringstate.inflow.RingStateInflow;
import java.util.function.ToDoubleFunction;

/**
 * A range that published descriptions give for something that a model of the ring state has, so
 * that a model outside contradicts them.
 *
 * @param name what it is, as part of a sentence
 * @param unit its unit; {@code 1} for a pure number
 * @param low the least value
 * @param high the greatest value
 * @param source where the range comes from, and how it was obtained
 * @param measure what a model has; infinite where it has no such thing
 */
public record PublishedRange(
    String name,
    String unit,
    double low,
    double high,
    String source,
    ToDoubleFunction<RingStateInflow> measure) {

  /** Checks that the range goes upward. */
  public PublishedRange {
    if (!(low < high)) {
      throw new IllegalArgumentException("a range goes upward, not from " + low + " to " + high);
    }
  }

  /**
   * Whether a model agrees with the range.
   *
   * @param model the model
   * @return true if what it has lies within the range or on its ends
   */
  public boolean holds(RingStateInflow model) {
    double value = measure.applyAsDouble(model);
    return value >= low && value <= high;
  }
}
