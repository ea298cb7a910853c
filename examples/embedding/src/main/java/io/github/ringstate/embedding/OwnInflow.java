package io.github.ringstate.embedding;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.InflowOver;
import io.github.ringstate.inflow.RingStateInflow;
import java.io.PrintStream;
import java.util.Locale;

/**
 * An inflow model of one's own: that of the ring state, with a share of the induced velocity more
 * where the rotor descends.
 */
public final class OwnInflow extends InflowOver {

  private final double more;

  /**
   * Adds to the ring state.
   *
   * @param more by how much the induced velocity is greater from an axial speed of -1 downward,
   *     over the hover induced velocity
   */
  public OwnInflow(double more) {
    super(RingStateInflow.standard(), more);
    this.more = more;
  }

  @Override
  public String name() {
    return "own-inflow";
  }

  @Override
  public double induced(double edgewise, double axial) {
    double sink = sink(axial);
    return super.induced(edgewise, axial) + more * sink * sink * (3 - 2 * sink);
  }

  @Override
  public double slope(double edgewise, double axial) {
    double sink = sink(axial);
    return super.slope(edgewise, axial) - 6 * more * sink * (1 - sink);
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
    InflowModel inflow = new OwnInflow(0.02);
    Encounter encounter =
        Encounter.of(DemoCraft.TRAINER).withInflow(inflow, new HeaveDamping(inflow)).withDelay(2);
    out.printf(Locale.ROOT, "%.1f m%n", encounter.fly().altitudeLoss().orElseThrow());
  }
}
