package io.github.ringstate.embedding;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Recognition;
import java.io.PrintStream;
import java.util.Locale;

/** Sweeps the delay with a recovery of one's own: one approach, many descents. */
public final class SweepOwnRecovery {

  private SweepOwnRecovery() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    Approach approach = Approach.fly(Encounter.of(DemoCraft.TRAINER), Simulator.fast());
    BulkFlight flight = new BulkFlight(approach);
    for (double delay = 0; delay <= 3; delay += 0.5) {
      flight.fly(new OwnRecovery(), Recognition.afterOnset(delay));
      out.printf(Locale.ROOT, "%.1f s %.1f m%n", delay, flight.altitudeLoss());
    }
  }
}
