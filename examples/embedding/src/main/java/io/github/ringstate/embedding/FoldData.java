package io.github.ringstate.embedding;

import io.github.ringstate.analysis.equilibrium.DescentCase;
import io.github.ringstate.analysis.equilibrium.Equilibrium;
import io.github.ringstate.analysis.equilibrium.EquilibriumCurve;
import io.github.ringstate.craft.DemoCraft;
import java.io.PrintStream;
import java.util.Locale;

/** Prints the steady vertical descents through their folds, ready to be plotted. */
public final class FoldData {

  private FoldData() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    EquilibriumCurve curve = EquilibriumCurve.againstCollective(DescentCase.of(DemoCraft.UTILITY));
    curve.points().forEach(point -> print(out, point, point.stable() ? "stable" : "unstable"));
    curve.folds().forEach(fold -> print(out, fold, "fold"));
  }

  private static void print(PrintStream out, Equilibrium at, String what) {
    out.printf(Locale.ROOT, "%.6f rad, %.4f m/s, %s%n", at.collective(), at.verticalSpeed(), what);
  }
}
