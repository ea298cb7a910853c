package io.github.ringstate.study;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.EdgeCheck;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Recovery;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

/**
 * Altitude loss against delay, for several recoveries, masses and airs.
 *
 * @param cells one cell for each craft, air, recovery and delay, in that order of nesting
 */
public record LossTable(List<LossCell> cells) {

  /** Copies the cells. */
  public LossTable {
    cells = List.copyOf(cells);
  }

  /**
   * Flies a table, fast: a loss is within a tenth of a foot of that of {@link Encounter#fly()}.
   * What comes before recognition is the same for all cells of a craft and an air, and is flown
   * once.
   *
   * @param base what all cells share
   * @param craft the craft, usually one at several masses
   * @param airs the airs
   * @param recoveries the recoveries
   * @param delays the delays from onset to the pilot's action, s
   * @return the table; a list that is empty gives an empty table
   * @throws CancellationException if the calling thread was interrupted
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if a craft cannot start the entry
   *     in one of the airs
   */
  public static LossTable fly(
      Encounter base,
      List<Helicopter> craft,
      List<Air> airs,
      List<Recovery> recoveries,
      List<Double> delays) {
    List<Encounter> blocks = new ArrayList<>();
    for (Helicopter one : craft) {
      for (Air air : airs) {
        blocks.add(base.withCraft(one).withAir(air));
      }
    }
    List<LossCell> cells = new ArrayList<>();
    OrderedWork.of(Progress.SILENT)
        .run(
            blocks.size(),
            () -> (number, ended) -> block(blocks.get((int) number), recoveries, delays),
            cells::addAll);
    return new LossTable(cells);
  }

  /**
   * Which cells are sensitive, on an edge between two outcomes. Each is flown twice more for it.
   *
   * @return for each cell, in order, what {@link EdgeCheck} says
   */
  public List<Boolean> sensitive() {
    List<Boolean> sensitive = new ArrayList<>();
    EdgeCheck check = null;
    for (LossCell cell : cells) {
      Encounter flown = cell.encounter();
      if (check == null || !check.serves(flown)) {
        check = new EdgeCheck(flown);
      }
      sensitive.add(check.isSensitive(flown.recovery(), flown.recognition(), cell.outcome()));
    }
    return sensitive;
  }

  private static List<LossCell> block(
      Encounter block, List<Recovery> recoveries, List<Double> delays) {
    BulkFlight flight = BulkFlight.withEvents(Approach.fly(block, Simulator.fast()));
    List<LossCell> cells = new ArrayList<>();
    for (Recovery recovery : recoveries) {
      for (double delay : delays) {
        Encounter cell = block.withRecovery(recovery).withDelay(delay);
        flight.fly(cell.recovery(), cell.recognition());
        cells.add(new LossCell(cell, flight.outcome()));
      }
    }
    return cells;
  }
}
