package io.github.ringstate.validation.open;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The altitude loss of one craft from the standard entry by one way out, with its standard numbers
 * and a delay, over models.
 *
 * @param craft the craft
 * @param technique the way out
 * @param delay from onset to the pilot's action, s
 * @param standard with the standard model, m
 * @param even with models as they are drawn, m; infinite where a descent is not arrested for good
 * @param accepted with models that meet the published ranges, m
 */
public record LossBand(
    Helicopter craft,
    Technique technique,
    double delay,
    double standard,
    Summary even,
    Summary accepted) {

  /** The ways out. */
  static final List<Technique> WAYS = Technique.ALL.stream().filter(Technique::wayOut).toList();

  private static final List<Double> DELAYS = List.of(0.0, 2.0);

  /**
   * Flies all ways out.
   *
   * @param craft the craft
   * @param models the models
   * @param most how many of each kind are flown at the most
   * @return a band for each way out and delay
   */
  public static List<LossBand> fly(Helicopter craft, ModelSets models, int most) {
    List<double[]> standard = losses(craft, List.of(RingStateInflow.standard()));
    List<double[]> even = losses(craft, first(models.even(), most));
    List<double[]> accepted = losses(craft, first(models.accepted().kept(), most));
    List<LossBand> bands = new ArrayList<>();
    for (int i = 0; i < WAYS.size() * DELAYS.size(); i++) {
      int column = i;
      bands.add(
          new LossBand(
              craft,
              WAYS.get(i / DELAYS.size()),
              DELAYS.get(i % DELAYS.size()),
              standard.get(0)[i],
              Summary.of(even.stream().mapToDouble(row -> row[column]).toArray()),
              Summary.of(accepted.stream().mapToDouble(row -> row[column]).toArray())));
    }
    return bands;
  }

  private static List<RingStateInflow> first(List<RingStateInflow> models, int most) {
    return models.subList(0, Math.min(most, models.size()));
  }

  /** Losses by model, and by way and delay, m. */
  private static List<double[]> losses(Helicopter craft, List<RingStateInflow> models) {
    return models.parallelStream().map(model -> losses(craft, model)).toList();
  }

  private static double[] losses(Helicopter craft, RingStateInflow model) {
    Encounter encounter = Encounter.of(craft).withInflow(model, new HeaveDamping(model));
    BulkFlight flight = new BulkFlight(Approach.fly(encounter, Simulator.fast()));
    return IntStream.range(0, WAYS.size() * DELAYS.size())
        .mapToDouble(
            i ->
                loss(
                    flight,
                    WAYS.get(i / DELAYS.size()).standard(),
                    encounter.recognition().withDelay(DELAYS.get(i % DELAYS.size()))))
        .toArray();
  }

  /** The loss of a flight, m; infinite where the descent was not arrested for good. */
  static double loss(BulkFlight flight, Recovery recovery, Recognition recognition) {
    return flight.fly(recovery, recognition) == Ending.ARRESTED
        ? flight.altitudeLoss()
        : Double.POSITIVE_INFINITY;
  }
}
