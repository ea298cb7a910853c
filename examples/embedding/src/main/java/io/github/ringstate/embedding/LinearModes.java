package io.github.ringstate.embedding;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.analysis.linear.Coordinate;
import io.github.ringstate.analysis.linear.LinearModel;
import io.github.ringstate.analysis.linear.Mode;
import io.github.ringstate.analysis.linear.RingSide;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.inflow.RingStateInflow;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** Prints the modes of a descent within the ring. */
public final class LinearModes {

  private LinearModes() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    EquationsOfMotion equations =
        new EquationsOfMotion(
            DemoCraft.TRAINER,
            StandardAtmosphere.at(0),
            Wind.CALM,
            RingStateInflow.standard(),
            false);
    double[] descent = Trim.find(equations, 0, -5).state(equations, 0, -5);
    List<Coordinate> coordinates =
        List.of(Coordinate.HEAVE, Coordinate.INFLOW, Coordinate.RING, Coordinate.ROTOR_SPEED);
    for (RingSide side : RingSide.values()) {
      double[] state = side.of(equations, descent);
      LinearModel model =
          LinearModel.about(equations, state, coordinates, List.of(Coordinate.COLLECTIVE));
      for (Mode mode : model.modes()) {
        out.printf(Locale.ROOT, "%s, %s: %.3f 1/s%n", side, mode.name(), mode.real());
      }
    }
  }
}
