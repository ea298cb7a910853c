package io.github.ringstate.instructor.loss;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.option.Clock;
import io.github.ringstate.instructor.option.Worse;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.instructor.pilots.ShownFlight;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a loss table is asked for.
 *
 * @param loaded the craft at each mass
 * @param airs the airs
 * @param approach how the flight comes to the ring state
 * @param recoveries the recoveries, one column each
 * @param delays the delays, s, one line each; empty if pilots have delays of their own
 * @param clock what a delay counts from
 * @param disturbances what disturbs the pilots or, without pilots, the one flight
 * @param pool the pilots; empty for the standard technique alone
 * @param state the state that the pilots' own delays go with; empty if the delays are given
 * @param drawn whether flights are shown one by one too
 * @param margin height to be left below the lowest point where a height is planned, m
 * @param compared what a second table beside the first is worse by; empty for no such table
 */
record LossRequest(
    List<Helicopter> loaded,
    List<Air> airs,
    Approach approach,
    List<Technique> recoveries,
    List<Double> delays,
    Clock clock,
    Disturbances disturbances,
    Optional<Pool> pool,
    Optional<PilotState> state,
    boolean drawn,
    double margin,
    Optional<Worse> compared) {

  /** Drawn are the flights with the delay nearest to this, s. */
  private static final double SHOWN_DELAY = 2;

  LossRequest {
    loaded = List.copyOf(loaded);
    airs = List.copyOf(airs);
    recoveries = List.copyOf(recoveries);
    delays = List.copyOf(delays);
  }

  /**
   * One table.
   *
   * @param craft the craft at its mass
   * @param air the air
   * @param delays the delays, s
   */
  record Planned(Helicopter craft, Air air, List<Double> delays) {}

  /** The tables: one for each mass in each air, or as planned and worse. */
  List<Planned> tables() {
    List<Planned> tables = new ArrayList<>();
    for (Helicopter craft : loaded) {
      airs.forEach(air -> tables.add(new Planned(craft, air, delays)));
    }
    compared.ifPresent(
        worse ->
            tables.add(
                new Planned(worse.on(loaded.get(0)), worse.on(airs.get(0)), worse.on(delays))));
    return tables;
  }

  /**
   * Whether a loss is more than the planned height holds with the margin left.
   *
   * @param loss the loss, m; infinite where the descent is not arrested
   * @return false without a planned height
   */
  boolean isTooMuch(double loss) {
    return approach.height().isPresent() && !(loss + margin <= approach.height().getAsDouble());
  }

  /** What is flown, in words. */
  Situation situation(UnitSystem units) {
    return Situation.of(loaded.get(0), approach, clock, disturbances, units);
  }

  /** How many flights of sampled pilots it takes. */
  long flights() {
    long cells = (long) tables().size() * recoveries.size();
    return cells * Math.max(1, delays.size()) * pool.map(Pool::flights).orElse(0L);
  }

  /** The delay of the flights that are drawn, s. */
  double shownDelay() {
    return state
        .map(pilots -> Math.rint(10 * pilots.median()) / 10)
        .or(
            () ->
                delays.stream()
                    .min(Comparator.comparingDouble(delay -> Math.abs(delay - SHOWN_DELAY))))
        .orElseThrow();
  }

  /** The encounter of the pilots, its recovery and delay to be set. */
  Encounter encounter(Conditions conditions) {
    return clock
        .on(approach.encounter(conditions.craft(), conditions.air()))
        .withDisturbances(disturbances);
  }

  /** Chance is the pilots' matter; the standard technique beside them meets none of it. */
  Encounter undisturbed(Conditions conditions) {
    return ShownFlight.undisturbed(encounter(conditions));
  }

  /** All that is flown by the standard techniques, for those who want to fly it again. */
  List<Encounter> flown() {
    List<Encounter> all = new ArrayList<>();
    for (Helicopter craft : loaded) {
      for (Air air : airs) {
        Encounter base = clock.on(approach.encounter(craft, air)).withDisturbances(disturbances);
        for (Technique recovery : recoveries) {
          Encounter encounter = base.withRecovery(recovery.standard());
          all.addAll(
              delays.isEmpty()
                  ? List.of(encounter)
                  : delays.stream().map(encounter::withDelay).toList());
        }
      }
    }
    return all;
  }
}
