package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import java.util.ArrayList;
import java.util.List;

/**
 * Sobol indices of the altitude loss, each number even over its range.
 *
 * <p>A variance needs a finite loss from every flight: a descent that is not arrested, or loses
 * more than a bound, counts as the bound. Where that is more than a few per cent of the flights,
 * the indices are those of being arrested as much as of the loss. A flight that never meets the
 * ring state has no loss at all, and nothing can stand in for it: such ranges are refused.
 *
 * @param inputs the numbers
 * @param indices an index for each, in their order; of losses in m
 * @param bounded the share of flights that count as the bound
 */
public record LossIndices(List<Input> inputs, SobolIndices indices, double bounded) {

  /** Copies the list. */
  public LossIndices {
    inputs = List.copyOf(inputs);
  }

  /**
   * Estimates the indices.
   *
   * @param encounter the encounter
   * @param inputs the numbers that vary, 1 to 32
   * @param bound the bound of the loss, m, positive
   * @param samples how many samples, rounded up to eight times a power of two; (inputs + 2) times
   *     as many are flown
   * @param seed the seed
   * @return the indices
   * @throws IllegalArgumentException if a flight does not meet the ring state
   */
  public static LossIndices of(
      Encounter encounter, List<Input> inputs, double bound, int samples, long seed) {
    if (!(bound > 0)) {
      throw new IllegalArgumentException("the bound must be positive, not " + bound + " m");
    }
    Simulator simulator = Simulator.fast();
    long[] beyond = new long[1];
    SobolIndices indices =
        SobolIndices.of(
            point -> {
              double loss = loss(encounter, inputs, point, simulator);
              if (loss >= bound) {
                beyond[0]++;
              }
              return Math.min(loss, bound);
            },
            inputs.size(),
            samples,
            seed);
    return new LossIndices(inputs, indices, (double) beyond[0] / indices.evaluations());
  }

  /** The loss, m; infinite where the descent is not arrested. */
  private static double loss(
      Encounter encounter, List<Input> inputs, double[] point, Simulator simulator) {
    Encounter changed = encounter;
    for (int i = 0; i < point.length; i++) {
      Input input = inputs.get(i);
      changed = input.change().with(changed, value(input, point[i]));
    }
    Outcome outcome = changed.fly(simulator, null);
    if (outcome.ending() == Ending.NO_ONSET) {
      throw new IllegalArgumentException(notMet(inputs, point));
    }
    return outcome.ending() == Ending.ARRESTED
        ? outcome.altitudeLoss().orElseThrow()
        : Double.POSITIVE_INFINITY;
  }

  private static String notMet(List<Input> inputs, double[] point) {
    List<String> values = new ArrayList<>();
    for (int i = 0; i < point.length; i++) {
      Input input = inputs.get(i);
      values.add(input.name() + " " + value(input, point[i]));
    }
    return "a flight that does not meet the ring state has no loss, so the ranges must be narrower: "
        + String.join(", ", values);
  }

  private static double value(Input input, double part) {
    double low = input.range().low();
    return low + part * (input.range().high() - low);
  }
}
