package io.github.ringstate.embedding;

import io.github.ringstate.analysis.best.BestRecovery;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** Searches for the least altitude loss, from one start, and compares the lateral recovery. */
public final class LeastLoss {

  private LeastLoss() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    Encounter encounter = Encounter.of(DemoCraft.HEAVY).withDelay(1);
    double[] hoverAttitude = new double[3 * BestRecovery.TIMES.size()];
    BestRecovery best =
        BestRecovery.find(encounter, BestRecovery.ALL_POWER, 1, List.of(hoverAttitude));
    out.printf(
        Locale.ROOT,
        "best found %.0f ft, lateral %.0f ft more%n",
        Unit.FOOT.fromSi(best.loss()),
        Unit.FOOT.fromSi(best.excess(Technique.LATERAL).orElseThrow()));
  }
}
