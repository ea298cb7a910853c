package io.github.ringstate.embedding;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.study.Sensitivity;
import java.io.PrintStream;
import java.util.Locale;

/** Asks how the altitude loss changes with the mass. */
public final class LossSensitivity {

  private LossSensitivity() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    Encounter base = Encounter.of(DemoCraft.TRAINER).withDelay(2);
    Sensitivity perKilogram =
        Sensitivity.ofLoss(
            mass -> base.withCraft(base.craft().with(Helicopter.MASS, mass)),
            Helicopter.MASS.quantity().within(500, 650),
            600);
    out.printf(Locale.ROOT, "%.3f m/kg, about %.0e%n", perKilogram.value(), perKilogram.error());
  }
}
