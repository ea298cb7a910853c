package io.github.ringstate.embedding;

import io.github.ringstate.analysis.sensitivity.Input;
import io.github.ringstate.analysis.sensitivity.Inputs;
import io.github.ringstate.analysis.sensitivity.Tornado;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.quantity.Unit;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Changes a few numbers one at a time: which of them the altitude loss depends on most. */
public final class LossTornado {

  private LossTornado() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    Encounter base = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);
    List<Input> inputs = new ArrayList<>(Inputs.model().subList(0, 3));
    inputs.add(Inputs.delay(base));
    inputs.add(Inputs.pressureAltitude(base.air()));
    for (Tornado.Bar bar : Tornado.of(base, inputs).bars()) {
      out.printf(
          Locale.ROOT,
          "%s: %.0f ft over its range%s%n",
          bar.input().name(),
          Unit.FOOT.fromSi(bar.length()),
          bar.agrees() ? "" : ", derivative not known");
    }
  }
}
