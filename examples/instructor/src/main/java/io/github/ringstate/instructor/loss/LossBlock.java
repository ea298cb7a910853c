package io.github.ringstate.instructor.loss;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.refusal.Refusal;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.LossCell;
import io.github.ringstate.study.LossTable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * The table at one mass in one air.
 *
 * @param conditions craft, mass and air
 * @param recoveries the columns
 * @param delays the lines, s
 * @param rows the flights, for each recovery each delay
 */
record LossBlock(
    Conditions conditions, List<RecoveryKind> recoveries, List<Double> delays, List<LossRow> rows) {

  LossBlock {
    recoveries = List.copyOf(recoveries);
    delays = List.copyOf(delays);
    rows = List.copyOf(rows);
  }

  /**
   * Flies all that is asked for.
   *
   * @param request what is asked for
   * @return a block for each mass in each air
   * @throws Refusal if a craft cannot hover or begin the entry in one of the airs
   */
  static List<LossBlock> fly(LossRequest request) {
    List<Conditions> all = new ArrayList<>();
    for (Helicopter craft : request.loaded()) {
      request.airs().forEach(air -> all.add(Conditions.of(craft, air)));
    }
    return all.stream().map(conditions -> fly(conditions, request)).toList();
  }

  private static LossBlock fly(Conditions conditions, LossRequest request) {
    Encounter base = Encounter.of(conditions.craft()).withEntry(request.approach().entry());
    if (request.approach().heightFt().isPresent()) {
      base = base.withHeight(Unit.FOOT.toSi(request.approach().heightFt().getAsDouble()));
    }
    List<Recovery> recoveries = request.recoveries().stream().map(RecoveryKind::recovery).toList();
    LossTable table;
    try {
      table =
          LossTable.fly(
              base,
              List.of(conditions.craft()),
              List.of(conditions.air()),
              recoveries,
              request.delays());
    } catch (IllegalStateException noStart) {
      throw Conditions.noStart(request.approach().kind().label(), noStart);
    }
    List<LossRow> rows = new ArrayList<>();
    Iterator<LossCell> cells = table.cells().iterator();
    for (RecoveryKind recovery : request.recoveries()) {
      for (double delay : request.delays()) {
        String entry = request.approach().kind().label();
        rows.add(LossRow.of(conditions, entry, recovery, delay, cells.next().outcome()));
      }
    }
    return new LossBlock(conditions, request.recoveries(), request.delays(), rows);
  }

  /**
   * One flight.
   *
   * @param recovery one of the recoveries
   * @param delay one of the delays, s
   * @return the flight
   */
  LossRow row(RecoveryKind recovery, double delay) {
    return rows.get(recoveries.indexOf(recovery) * delays.size() + delays.indexOf(delay));
  }

  /**
   * The flights of a recovery.
   *
   * @param recovery one of the recoveries
   * @return the flights, the shortest delay first
   */
  List<LossRow> column(RecoveryKind recovery) {
    return delays.stream().sorted().map(delay -> row(recovery, delay)).toList();
  }
}
