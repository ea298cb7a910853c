package io.github.ringstate.embedding;

import io.github.ringstate.analysis.sensitivity.Input;
import io.github.ringstate.analysis.sensitivity.Inputs;
import io.github.ringstate.analysis.sensitivity.LossIndices;
import io.github.ringstate.analysis.sensitivity.SobolIndices.Index;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Changes numbers of pilot and model all at once: who accounts for the variance of the loss. */
public final class SobolShares {

  private SobolShares() {}

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
    // 64 samples of four numbers; a descent that loses 300 m or more counts as 300 m
    LossIndices found = LossIndices.of(base, inputs, 300, 64, 1);
    for (int i = 0; i < inputs.size(); i++) {
      Index index = found.indices().indices().get(i);
      out.printf(
          Locale.ROOT,
          "%s: total %.2f +- %.2f%n",
          inputs.get(i).name(),
          index.total(),
          index.totalHalfWidth());
    }
  }
}
