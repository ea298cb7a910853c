package io.github.ringstate.study.run;

import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.EventKind;
import io.github.ringstate.encounter.Occurrence;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Technique;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A way out of the ring state and how long the craft stays in it on the way.
 *
 * @param technique the technique, with its standard numbers
 * @param turn where it leads, rad clockwise from the nose: 0 ahead, a right angle to the side
 * @param exposure from onset to the last instant in the ring state, s
 */
public record Escape(Technique technique, double turn, double exposure) {

  /**
   * Finds the way out ahead or to the side with the shortest exposure.
   *
   * @param encounter the encounter; its recovery plays no part
   * @return the way; empty where the ring state is not met, or neither way leads out
   */
  public static Optional<Escape> shortest(Encounter encounter) {
    Simulator simulator = Simulator.precise();
    Approach approach = Approach.fly(encounter, simulator);
    double side = encounter.craft().sense().tailPush() * Math.PI / 2;
    return List.of(new Escape(Technique.FORWARD, 0, 0), new Escape(Technique.LATERAL, side, 0))
        .stream()
        .map(way -> way.flown(encounter, approach, simulator))
        .flatMap(Optional::stream)
        .min(Comparator.comparingDouble(Escape::exposure));
  }

  private Optional<Escape> flown(Encounter encounter, Approach approach, Simulator simulator) {
    Outcome outcome = encounter.withRecovery(technique.standard()).fly(approach, simulator, null);
    if (outcome.ending() != Ending.ARRESTED) {
      return Optional.empty();
    }
    double onset = outcome.onsetTime().getAsDouble();
    double last =
        outcome.occurrences().stream()
            .filter(seen -> seen.kind() == EventKind.RING_STATE_LEFT)
            .mapToDouble(Occurrence::time)
            .max()
            .orElse(onset + outcome.timeToArrest().getAsDouble());
    return Optional.of(new Escape(technique, turn, last - onset));
  }
}
