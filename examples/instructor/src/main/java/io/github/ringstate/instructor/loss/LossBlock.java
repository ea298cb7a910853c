package io.github.ringstate.instructor.loss;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.instructor.progress.Work;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.LossCell;
import io.github.ringstate.study.LossTable;
import io.github.ringstate.study.PilotStudy;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The table at one mass in one air.
 *
 * @param conditions craft, mass and air
 * @param recoveries the columns
 * @param delays the lines, s
 * @param rows the flights of the standard technique, for each recovery each delay
 * @param pilots many pilots, in the same order; without delays one line for each recovery; empty
 *     without pilots
 */
record LossBlock(
    Conditions conditions,
    List<Technique> recoveries,
    List<Double> delays,
    List<LossRow> rows,
    List<PilotRow> pilots) {

  LossBlock {
    recoveries = List.copyOf(recoveries);
    delays = List.copyOf(delays);
    rows = List.copyOf(rows);
    pilots = List.copyOf(pilots);
  }

  /**
   * Flies all that is asked for.
   *
   * @param request what is asked for
   * @param work hears how far it has come
   * @return a block for each mass in each air
   * @throws UserError if a craft cannot hover or begin the entry in one of the airs
   */
  static List<LossBlock> fly(LossRequest request, Work work) {
    List<Conditions> all = new ArrayList<>();
    for (Helicopter craft : request.loaded()) {
      request.airs().forEach(air -> all.add(Conditions.of(craft, air)));
    }
    return all.stream().map(conditions -> fly(conditions, request, work)).toList();
  }

  private static LossBlock fly(Conditions conditions, LossRequest request, Work work) {
    Encounter disturbed = request.encounter(conditions);
    try {
      return new LossBlock(
          conditions,
          request.recoveries(),
          request.delays(),
          rows(
              conditions,
              request,
              request.pool().isPresent() ? request.undisturbed(conditions) : disturbed),
          request.pool().isPresent()
              ? pilots(conditions, request, disturbed, request.pool().get(), work)
              : List.of());
    } catch (NoSteadyFlightException noStart) {
      throw Conditions.noStart(request.approach().kind().label(), noStart);
    }
  }

  private static List<LossRow> rows(Conditions conditions, LossRequest request, Encounter base) {
    List<Recovery> recoveries = request.recoveries().stream().map(Technique::standard).toList();
    LossTable table =
        LossTable.fly(
            base,
            List.of(conditions.craft()),
            List.of(conditions.air()),
            recoveries,
            request.delays());
    List<LossRow> rows = new ArrayList<>();
    Iterator<LossCell> cells = table.cells().iterator();
    for (Technique recovery : request.recoveries()) {
      for (double delay : request.delays()) {
        String entry = request.approach().kind().label();
        rows.add(LossRow.of(conditions, entry, recovery, delay, cells.next().outcome()));
      }
    }
    return rows;
  }

  private static List<PilotRow> pilots(
      Conditions conditions, LossRequest request, Encounter base, Pool pool, Work work) {
    List<OptionalDouble> delays =
        request.state().isPresent()
            ? List.of(OptionalDouble.empty())
            : request.delays().stream().map(OptionalDouble::of).toList();
    List<PilotRow> rows = new ArrayList<>();
    for (Technique recovery : request.recoveries()) {
      for (OptionalDouble delay : delays) {
        PilotStudy study =
            pool.study(
                delay.isPresent() ? base.withDelay(delay.getAsDouble()) : base,
                recovery,
                request.state());
        rows.add(
            new PilotRow(
                conditions,
                request.approach().kind().label(),
                recovery,
                delay,
                pool.fly(study, work)));
      }
    }
    return rows;
  }

  /**
   * All that was flown, line by line.
   *
   * @return a line for each recovery and delay
   */
  List<LossLine> lines() {
    if (rows.isEmpty()) {
      return pilots.stream().map(LossLine::of).toList();
    }
    return IntStream.range(0, rows.size())
        .mapToObj(
            i ->
                LossLine.of(
                    rows.get(i), pilots.isEmpty() ? Optional.empty() : Optional.of(pilots.get(i))))
        .toList();
  }

  /**
   * What to take away from the block.
   *
   * @param units the units to speak in
   * @return one sentence
   */
  String inShort(UnitSystem units) {
    return pilots.isEmpty() ? TakeAway.of(this, units) : PilotTakeAway.of(this, units);
  }

  /**
   * One flight.
   *
   * @param recovery one of the recoveries
   * @param delay one of the delays, s
   * @return the flight
   */
  LossRow row(Technique recovery, double delay) {
    return rows.get(recoveries.indexOf(recovery) * delays.size() + delays.indexOf(delay));
  }

  /**
   * The pilots of one line.
   *
   * @param recovery one of the recoveries
   * @param delay one of the delays, s; empty if each pilot has one of their own
   * @return the pilots
   */
  PilotRow pilots(Technique recovery, OptionalDouble delay) {
    return pilots.stream()
        .filter(row -> row.recovery().equals(recovery) && row.delayS().equals(delay))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The flights of a recovery.
   *
   * @param recovery one of the recoveries
   * @return the flights, the shortest delay first
   */
  List<LossRow> column(Technique recovery) {
    return delays.stream().sorted().map(delay -> row(recovery, delay)).toList();
  }
}
