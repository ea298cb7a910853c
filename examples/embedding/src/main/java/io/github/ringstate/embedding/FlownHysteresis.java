package io.github.ringstate.embedding;

import io.github.ringstate.analysis.equilibrium.DescentCase;
import io.github.ringstate.analysis.equilibrium.HysteresisLoop;
import io.github.ringstate.analysis.equilibrium.HysteresisLoop.Sample;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.quantity.Unit;
import java.io.PrintStream;
import java.util.Locale;

/** Lowers the collective until the sink jumps down, and raises it until it jumps back. */
public final class FlownHysteresis {

  private FlownHysteresis() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    HysteresisLoop loop =
        HysteresisLoop.fly(DescentCase.of(DemoCraft.UTILITY), Unit.DEGREE.toSi(0.05)).orElseThrow();
    print(out, "down", loop.jumpDown());
    print(out, "back", loop.jumpUp());
  }

  private static void print(PrintStream out, String which, Sample jump) {
    out.printf(Locale.ROOT, "%s at %.2f deg%n", which, Unit.DEGREE.fromSi(jump.collective()));
  }
}
