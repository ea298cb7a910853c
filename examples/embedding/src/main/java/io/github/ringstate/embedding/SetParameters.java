package io.github.ringstate.embedding;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.io.PrintStream;
import java.util.List;

/** Sets a value, reads it in SI units, and sees one refused that is out of range. */
public final class SetParameters {

  private SetParameters() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    Parameter mass =
        Parameter.of("mass", Unit.KILOGRAM, 300, 2000, 600, "Invented for this program.");
    Parameter descent =
        Parameter.of("descent rate", Unit.FOOT_PER_MINUTE, 0, 6000, 800, "Invented likewise.");

    ParameterSet standard = ParameterSet.standard(List.of(mass, descent));
    ParameterSet steeper = standard.with(descent, 1500);

    out.println(standard);
    out.println(steeper.si(descent) + " m/s");
    try {
      steeper.with(mass, 25);
    } catch (OutOfRangeException refused) {
      out.println(refused.getMessage());
    }
  }
}
