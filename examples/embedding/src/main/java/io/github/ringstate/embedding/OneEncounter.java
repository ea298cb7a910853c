package io.github.ringstate.embedding;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.quantity.Unit;
import java.io.PrintStream;
import java.util.Locale;

/** Flies one encounter and prints what it cost in height. */
public final class OneEncounter {

  private OneEncounter() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    Outcome outcome =
        Encounter.of(DemoCraft.TRAINER)
            .withAir(StandardAtmosphere.at(Unit.FOOT.toSi(4000)))
            .withRecovery(new Lateral())
            .withDelay(2)
            .fly();
    outcome
        .altitudeLoss()
        .ifPresent(loss -> out.printf(Locale.ROOT, "%.0f ft%n", Unit.FOOT.fromSi(loss)));
  }
}
