package io.github.ringstate.study;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.flight.PreciseFlyer;
import io.github.ringstate.pilot.Recovery;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

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
   * Flies a table.
   *
   * @param base what all cells share
   * @param craft the craft, usually one at several masses
   * @param airs the airs
   * @param recoveries the recoveries
   * @param delays the delays from onset to the pilot's action, s
   * @return the table; a list that is empty gives an empty table
   * @throws IllegalStateException if a craft cannot start the entry in one of the airs
   */
  public static LossTable fly(
      Encounter base,
      List<Helicopter> craft,
      List<Air> airs,
      List<Recovery> recoveries,
      List<Double> delays) {
    PreciseFlyer flyer = PreciseFlyer.standard();
    List<Supplier<LossCell>> cells = new ArrayList<>();
    for (Helicopter one : craft) {
      for (Air air : airs) {
        // What comes before recognition is the same for all cells of a block, and is flown once.
        Encounter block = base.withCraft(one).withAir(air);
        Approach approach = Approach.fly(block, flyer);
        for (Recovery recovery : recoveries) {
          for (double delay : delays) {
            Encounter cell = block.withRecovery(recovery).withDelay(delay);
            cells.add(() -> new LossCell(cell, cell.fly(approach, flyer, null)));
          }
        }
      }
    }
    // Each cell is flown alone, so the result is the same for any number of threads.
    return new LossTable(cells.parallelStream().map(Supplier::get).toList());
  }
}
