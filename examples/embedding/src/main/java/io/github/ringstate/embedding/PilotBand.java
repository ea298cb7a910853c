package io.github.ringstate.embedding;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Sampling;
import java.io.PrintStream;
import java.util.Locale;
import java.util.Optional;

/** Flies many sampled pilots and prints what nineteen in twenty of them lost. */
public final class PilotBand {

  private PilotBand() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    PilotStudy study =
        new PilotStudy(
            Encounter.of(DemoCraft.TRAINER),
            Technique.LATERAL,
            Optional.of(PilotState.DISTRACTED.delays()),
            42);
    LossSpread losses = study.fly(Sampling.of(1024), Progress.SILENT);
    Quantile loss = losses.quantile(0.95, 0.95);
    out.printf(
        Locale.ROOT,
        "%.0f ft (%.0f to %.0f ft)%n",
        Unit.FOOT.fromSi(loss.value()),
        Unit.FOOT.fromSi(loss.low()),
        Unit.FOOT.fromSi(loss.high()));
  }
}
