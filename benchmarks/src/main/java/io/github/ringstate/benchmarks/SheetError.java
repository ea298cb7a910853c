package io.github.ringstate.benchmarks;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotStudy;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * How far the 95 per cent losses of a sheet, at fixed delays, lie from the truth: evenly spread
 * pilots, fewer and fewer, beside a thousand independent ones. It says how many pilots of {@link
 * InstructorsSheet} give the same error.
 *
 * <p>{@code java -cp benchmarks.jar io.github.ringstate.benchmarks.SheetError [sets]}, 256 unless
 * given.
 */
public final class SheetError {

  private static final int INDEPENDENT = 1000;
  private static final int[] PILOTS = {64, 128, 256, 512};
  private static final int REPETITIONS = 500;
  private static final double MOST = 0.95;

  private SheetError() {}

  /**
   * Flies and prints a table.
   *
   * @param args the number of sets, or nothing
   */
  public static void main(String[] args) {
    int sets = args.length > 0 ? Integer.parseInt(args[0]) : 256;
    System.out.println(
        "technique | delay, s | 95 per cent point, ft | error of 1000 independent, ft | of 64 | of 128 | of"
            + " 256 | of 512 evenly spread");
    for (Technique technique :
        List.of(
            Technique.FORWARD, Technique.LATERAL, Technique.AUTOROTATION, Technique.COLLECTIVE)) {
      for (double delay = 0; delay <= 4; delay += 0.5) {
        PilotStudy study =
            new PilotStudy(
                Encounter.of(DemoCraft.TRAINER).withDelay(delay), technique, Optional.empty(), 0);
        System.out.printf(
            Locale.ROOT, "%s | %.1f | %s%n", technique.name(), delay, errors(study, sets));
      }
    }
  }

  private static String errors(PilotStudy study, int number) {
    FlownSets sets = new FlownSets(study, number);
    double truth = sets.truth().loss(MOST);
    double[] squares = new double[PILOTS.length + 1];
    for (int i = 0; i < REPETITIONS; i++) {
      SplittableRandom random = new SplittableRandom(i);
      int[] chosen = sets.choose(random);
      squares[0] += square(sets.independent(random, INDEPENDENT), truth);
      for (int j = 0; j < PILOTS.length; j++) {
        squares[j + 1] += square(sets.study(chosen, PILOTS[j]), truth);
      }
    }
    StringBuilder line = new StringBuilder();
    line.append(String.format(Locale.ROOT, "%.1f", Unit.FOOT.fromSi(truth)));
    for (double square : squares) {
      line.append(
          String.format(Locale.ROOT, " | %.2f", Unit.FOOT.fromSi(Math.sqrt(square / REPETITIONS))));
    }
    return line.toString();
  }

  private static double square(LossSpread losses, double truth) {
    double difference = losses.loss(MOST) - truth;
    return difference * difference;
  }
}
