package io.github.ringstate.embedding;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.StabilityBoundInflow;
import io.github.ringstate.inflow.ThreeStateInflow;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.LossCell;
import io.github.ringstate.study.LossTable;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** Flies the same encounters by other physics: what a loss owes to the inflow model. */
public final class OtherPhysics {

  private OtherPhysics() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    RingStateInflow ring = RingStateInflow.standard();
    List<Recovery> recoveries = List.of(Technique.FORWARD.standard(), Technique.LATERAL.standard());
    for (Helicopter craft : DemoCraft.ALL) {
      for (InflowModel inflow :
          List.of(ring, new ThreeStateInflow(ring), StabilityBoundInflow.standard())) {
        Encounter base = Encounter.of(craft).withInflow(inflow, new HeaveDamping(inflow));
        out.printf("%-8s%-23s", craft.name(), inflow.name());
        var airs = List.of(StandardAtmosphere.at(0));
        var delays = List.of(0.0, 1.0, 2.0, 3.0);
        for (LossCell cell :
            LossTable.fly(base, List.of(craft), airs, recoveries, delays).cells()) {
          double loss = cell.outcome().altitudeLoss().orElse(Double.NaN);
          boolean arrested = cell.outcome().ending() == Ending.ARRESTED;
          out.print(
              arrested ? String.format(Locale.ROOT, "%6.1f", Unit.FOOT.fromSi(loss)) : "     -");
        }
        out.println();
      }
    }
  }
}
