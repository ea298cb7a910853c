package io.github.ringstate.validation.results;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import java.util.List;
import java.util.Optional;

/**
 * What a craft loses while one thing varies.
 *
 * @param craft the craft
 * @param against what varies
 * @param points a point for each value at which the craft can fly the entry
 */
public record LossLine(Helicopter craft, Against against, List<LossPoint> points) {

  /** Copies the list. */
  public LossLine {
    points = List.copyOf(points);
  }

  /**
   * Flies a line.
   *
   * @param craft the craft
   * @param against what varies
   * @param effort how much is flown for each point
   * @return the line, the same for any number of threads
   */
  public static LossLine fly(Helicopter craft, Against against, Effort effort) {
    return fly(craft, against, against.values(craft), effort);
  }

  static LossLine fly(Helicopter craft, Against against, List<Double> values, Effort effort) {
    return new LossLine(
        craft,
        against,
        values.parallelStream()
            .flatMap(value -> point(craft, against, value, effort).stream())
            .toList());
  }

  private static Optional<LossPoint> point(
      Helicopter craft, Against against, double value, Effort effort) {
    Encounter encounter = against.encounter(craft, value);
    try {
      return Optional.of(LossPoint.of(value, encounter, effort));
    } catch (NoSteadyFlightException tooHeavyOrHigh) {
      return Optional.empty();
    }
  }
}
