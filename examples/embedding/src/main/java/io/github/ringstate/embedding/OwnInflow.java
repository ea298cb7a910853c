package io.github.ringstate.embedding;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.VortexRing;
import java.io.PrintStream;
import java.util.Locale;

/**
 * An inflow model of one's own: that of the ring state, with a share of the induced velocity more
 * where the rotor descends.
 *
 * @param base the model it starts from
 * @param more by how much the induced velocity is greater at an axial speed of -1, over that speed
 */
public record OwnInflow(RingStateInflow base, double more) implements InflowModel {

  @Override
  public String name() {
    return "own-inflow";
  }

  @Override
  public double induced(double edgewise, double axial) {
    return base.induced(edgewise, axial) + more * sink(axial) * sink(axial);
  }

  @Override
  public double slope(double edgewise, double axial) {
    return base.slope(edgewise, axial) - 2 * more * sink(axial);
  }

  @Override
  public double lossShare(double edgewise, double axial) {
    return base.lossShare(edgewise, axial);
  }

  @Override
  public VortexRing ring() {
    return base.ring();
  }

  private static double sink(double axial) {
    return Math.max(0, Math.min(1, -axial));
  }

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    InflowModel inflow = new OwnInflow(RingStateInflow.standard(), 0.02);
    Encounter encounter =
        Encounter.of(DemoCraft.TRAINER).withInflow(inflow, new HeaveDamping(inflow)).withDelay(2);
    out.printf(Locale.ROOT, "%.1f m%n", encounter.fly().altitudeLoss().orElseThrow());
  }
}
