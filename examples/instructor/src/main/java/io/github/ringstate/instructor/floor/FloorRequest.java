package io.github.ringstate.instructor.floor;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.option.Clock;
import io.github.ringstate.instructor.option.Worse;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.Briefing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a table of floors is asked for.
 *
 * @param loaded the craft at each mass
 * @param airs the airs
 * @param approach how the flight comes to the ring state, without ground
 * @param briefed the height at onset to brief for, m; empty for none
 * @param recoveries the recoveries
 * @param states the states of the pilots
 * @param clock what a delay counts from
 * @param disturbances what disturbs the pilots
 * @param pool the pilots
 * @param share the share that is to recover
 * @param margin height to be left below the lowest point, m
 * @param groundShare the share of pilots on the ground above which no technique is briefed
 * @param compared what a second table beside the first is worse by; empty for no such table
 */
record FloorRequest(
    List<Helicopter> loaded,
    List<Air> airs,
    Approach approach,
    OptionalDouble briefed,
    List<Technique> recoveries,
    List<PilotState> states,
    Clock clock,
    Disturbances disturbances,
    Pool pool,
    double share,
    double margin,
    double groundShare,
    Optional<Worse> compared) {

  /** Halvings that the search for a latest moment takes at most. */
  private static final int HALVINGS = 6;

  FloorRequest {
    loaded = List.copyOf(loaded);
    airs = List.copyOf(airs);
    recoveries = List.copyOf(recoveries);
    states = List.copyOf(states);
  }

  /**
   * One table.
   *
   * @param craft the craft at its mass
   * @param air the air
   * @param later by how much pilots act later than their state has it, s
   */
  record Planned(Helicopter craft, Air air, double later) {}

  /** The tables: one for each mass in each air, or as planned and worse. */
  List<Planned> tables() {
    List<Planned> tables = new ArrayList<>();
    for (Helicopter craft : loaded) {
      airs.forEach(air -> tables.add(new Planned(craft, air, 0)));
    }
    compared.ifPresent(
        worse ->
            tables.add(new Planned(worse.on(loaded.get(0)), worse.on(airs.get(0)), worse.later())));
    return tables;
  }

  /** What is flown, in words; where the ground is, is asked. */
  Situation situation(UnitSystem units) {
    return Situation.of(loaded.get(0), approach, clock, disturbances, units).withoutGround();
  }

  /** The recoveries that leave the wake: the others have no moment up to which they work. */
  List<Technique> waysOut() {
    return recoveries.stream().filter(Technique::wayOut).toList();
  }

  /** The library's briefing. */
  Briefing briefing() {
    return new Briefing(share, margin, pool.sampling(share));
  }

  /** How many flights a search for a latest moment takes at most. */
  long search() {
    return (long) HALVINGS * pool.pilots();
  }

  /** How many flights all of it takes at most. */
  long flights() {
    long searches = briefed.isPresent() ? waysOut().size() * search() : 0;
    long lines = (long) recoveries.size() * states.size();
    return (long) tables().size() * (lines * pool.flights() + searches);
  }

  /** What the pilots fly, by the standard techniques and with the median delays. */
  List<Encounter> flown() {
    List<Encounter> all = new ArrayList<>();
    for (Helicopter craft : loaded) {
      for (Air air : airs) {
        Encounter base = clock.on(approach.encounter(craft, air)).withDisturbances(disturbances);
        for (Technique recovery : recoveries) {
          for (PilotState state : states) {
            all.add(base.withRecovery(recovery.standard()).withDelay(state.median()));
          }
        }
      }
    }
    return all;
  }
}
