package io.github.ringstate.benchmarks;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Share;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * How often the intervals of a study hold the truth, and how far the quantiles of evenly spread
 * pilots and of as many independent ones lie from it: each built-in technique with each state of
 * the pilots, for the trainer's standard entry. Every repetition is a study of {@link FlownSets}.
 * The stopping rule is asked for the median half width of as many pilots, so that it stops at
 * different numbers.
 *
 * <p>{@code java -cp benchmarks.jar io.github.ringstate.benchmarks.Coverage [sets [repetitions]]};
 * 1,024 and 2,000 unless given, which flies 131,072 pilots for each technique and state.
 */
public final class Coverage {

  private static final int[] PILOTS = {256, 512, 1024};
  private static final double CONFIDENCE = 0.95;
  private static final double MOST = 0.95;
  private static final double MEDIAN = 0.5;

  private final FlownSets sets;
  private final int repetitions;
  private final double median;
  private final double most;

  private Coverage(FlownSets sets, int repetitions) {
    this.sets = sets;
    this.repetitions = repetitions;
    median = sets.truth().loss(MEDIAN);
    most = sets.truth().loss(MOST);
  }

  /**
   * Flies and prints a table.
   *
   * @param args the number of sets and of repetitions, or nothing
   */
  public static void main(String[] args) {
    int sets = args.length > 0 ? Integer.parseInt(args[0]) : 1024;
    int repetitions = args.length > 1 ? Integer.parseInt(args[1]) : 2000;
    System.out.println(
        "technique | state | true 50 %, ft | true 95 %, ft | true arrested | pilots | 50 % held |"
            + " 95 % held | arrested held | share losing the true 95 % held | independent 95 % held"
            + " | median half width, ft | error, ft | independent error, ft | ratio of variances |"
            + " stopped, held | pilots then");
    for (Technique technique : Technique.ALL) {
      for (PilotState state : PilotState.values()) {
        PilotStudy study =
            new PilotStudy(
                Encounter.of(DemoCraft.TRAINER), technique, Optional.of(state.delays()), 0);
        Coverage coverage = new Coverage(new FlownSets(study, sets), repetitions);
        for (int pilots : PILOTS) {
          System.out.println(
              technique.name() + " | " + state.label() + " | " + coverage.line(pilots));
        }
      }
    }
  }

  private String line(int pilots) {
    LossSpread truth = sets.truth();
    int[] held = new int[5];
    double[] half = new double[repetitions];
    double squares = 0;
    double independentSquares = 0;
    for (int i = 0; i < repetitions; i++) {
      SplittableRandom random = new SplittableRandom(i);
      LossSpread study = sets.study(sets.choose(random), pilots);
      LossSpread independent = sets.independent(random, pilots);
      Quantile quantile = study.quantile(MOST, CONFIDENCE);
      held[0] += holds(study.quantile(MEDIAN, CONFIDENCE), median);
      held[1] += holds(quantile, most);
      held[2] += holds(study.arrested(CONFIDENCE), truth.arrestedShare());
      held[3] += holds(study.shareLosing(most, CONFIDENCE), truth.shareLosing(most));
      held[4] += holds(independent.quantile(MOST, CONFIDENCE), most);
      half[i] = quantile.halfWidth();
      squares += square(quantile.value() - most);
      independentSquares += square(independent.loss(MOST) - most);
    }
    Arrays.sort(half);
    double precision = half[repetitions / 2];
    return String.format(
        Locale.ROOT,
        "%.1f | %.1f | %.4f | %d | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f |"
            + " %s",
        feet(median),
        feet(most),
        truth.arrestedShare(),
        pilots,
        percent(held[0]),
        percent(held[1]),
        percent(held[2]),
        percent(held[3]),
        percent(held[4]),
        feet(precision),
        feet(Math.sqrt(squares / repetitions)),
        feet(Math.sqrt(independentSquares / repetitions)),
        independentSquares / squares,
        stopped(precision));
  }

  /** The rule of {@link io.github.ringstate.study.Sampling}. */
  private String stopped(double precision) {
    int held = 0;
    long flown = 0;
    for (int i = 0; i < repetitions; i++) {
      int[] chosen = sets.choose(new SplittableRandom(i));
      int pilots = PILOTS[0];
      Quantile before = sets.study(chosen, pilots / 2).quantile(MOST, CONFIDENCE);
      Quantile quantile = sets.study(chosen, pilots).quantile(MOST, CONFIDENCE);
      while (quantile.low() < Double.POSITIVE_INFINITY
          && (quantile.halfWidth() > precision || before.halfWidth() > 2 * precision)
          && pilots < PILOTS[PILOTS.length - 1]) {
        pilots *= 2;
        before = quantile;
        quantile = sets.study(chosen, pilots).quantile(MOST, CONFIDENCE);
      }
      held += holds(quantile, most);
      flown += pilots;
    }
    return String.format(Locale.ROOT, "%.1f | %d", percent(held), flown / repetitions);
  }

  private double percent(int held) {
    return 100.0 * held / repetitions;
  }

  private static double feet(double metres) {
    return Unit.FOOT.fromSi(metres);
  }

  private static int holds(Quantile quantile, double truth) {
    return quantile.low() <= truth && truth <= quantile.high() ? 1 : 0;
  }

  private static int holds(Share share, double truth) {
    return share.low() <= truth && truth <= share.high() ? 1 : 0;
  }

  private static double square(double difference) {
    return difference * difference;
  }
}
