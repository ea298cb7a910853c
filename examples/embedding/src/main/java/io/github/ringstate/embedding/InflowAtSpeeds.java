package io.github.ringstate.embedding;

import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowCurve;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.RingStateInflow;
import java.io.PrintStream;
import java.util.Locale;

/** Samples the induced velocity of the ring-state model and asks for its boundary. */
public final class InflowAtSpeeds {

  private InflowAtSpeeds() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    RingStateInflow model = RingStateInflow.standard();
    for (InflowCurve.Point point : InflowCurve.sample(model, 0, 0, -2, 5).points()) {
      out.printf(Locale.ROOT, "%.2f %.3f%n", point.axial(), point.induced());
    }
    RingBand band = new HeaveDamping(model).band(0).orElseThrow();
    out.printf(Locale.ROOT, "%.2f to %.2f%n", band.onset(), band.exit().orElse(Double.NaN));
  }
}
