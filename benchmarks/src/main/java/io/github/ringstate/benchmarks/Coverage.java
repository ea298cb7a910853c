package io.github.ringstate.benchmarks;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.SobolStream;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Simulator;
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
 * pilots and of as many independent ones lie from it: each built-in technique with each state of the
 * pilots.
 *
 * <p>Many sets of evenly spread pilots are flown, each scrambled anew. Every repetition is a study
 * of eight of them, chosen at random; the truth is all of them together. Studies of independent
 * pilots are chosen from the same flights, one by one.
 *
 * <p>{@code java -cp benchmarks.jar io.github.ringstate.benchmarks.Coverage [sets [repetitions]]};
 * a line takes some seconds with 1,024 sets, as unless given.
 */
public final class Coverage {

  /** Pilots of a set: a study of eight has 1,024. */
  private static final int OF_A_SET = 128;

  /** Pilots of the studies whose intervals are looked at. */
  private static final int[] PILOTS = {256, 512, 1024};

  private static final double CONFIDENCE = 0.95;
  private static final double MOST = 0.95;
  private static final double MEDIAN = 0.5;

  private final int sets;
  private final int repetitions;
  private final Encounter base = Encounter.of(DemoCraft.TRAINER);
  private final BulkFlight flight = new BulkFlight(Approach.fly(base, Simulator.fast()));

  private Coverage(int sets, int repetitions) {
    this.sets = sets;
    this.repetitions = repetitions;
  }

  /**
   * Flies and prints a table.
   *
   * @param args the number of sets and of repetitions, or nothing
   */
  public static void main(String[] args) {
    Coverage coverage =
        new Coverage(
            args.length > 0 ? Integer.parseInt(args[0]) : 1024,
            args.length > 1 ? Integer.parseInt(args[1]) : 2000);
    System.out.println(
        "technique | state | true 50 %, ft | true 95 %, ft | true arrested | pilots | 50 % held |"
            + " 95 % held | arrested held | share losing the true 95 % held | independent 95 % held |"
            + " half width, ft | error, ft | independent error, ft | variance of so many times as many"
            + " independent | stopped, held | pilots then");
    for (Technique technique : Technique.ALL) {
      for (PilotState state : PilotState.values()) {
        coverage.print(technique, state);
      }
    }
  }

  private void print(Technique technique, PilotState state) {
    Population population = new Population(technique, state);
    for (int pilots : PILOTS) {
      System.out.printf(
          Locale.ROOT,
          "%s | %s | %.1f | %.1f | %.4f | %s%n",
          technique.name(),
          state.label(),
          feet(population.truth.loss(MEDIAN)),
          feet(population.truth.loss(MOST)),
          population.truth.arrestedShare(),
          population.line(pilots));
    }
  }

  private static double feet(double metres) {
    return Unit.FOOT.fromSi(metres);
  }

  /** The flights of all sets. */
  private final class Population {

    private final Ending[][] endings = new Ending[sets][OF_A_SET];
    private final double[][] losses = new double[sets][OF_A_SET];
    private final LossSpread truth;
    private final double[] half;

    Population(Technique technique, PilotState state) {
      for (int set = 0; set < sets; set++) {
        PilotStudy study =
            new PilotStudy(base, technique, Optional.of(state.delays()), set / SobolStream.SETS);
        for (int pilot = 0; pilot < OF_A_SET; pilot++) {
          Encounter flown =
              study.encounter((long) pilot * SobolStream.SETS + set % SobolStream.SETS);
          endings[set][pilot] = flight.fly(flown.recovery(), flown.recognition());
          losses[set][pilot] = flight.altitudeLoss();
        }
      }
      truth =
          LossSpread.of(
              Arrays.stream(endings).flatMap(Arrays::stream).toArray(Ending[]::new),
              Arrays.stream(losses).flatMapToDouble(Arrays::stream).toArray());
      half = new double[repetitions];
    }

    /** What is found with so many pilots. */
    String line(int pilots) {
      double most = truth.loss(MOST);
      int[] held = new int[6];
      double widths = 0;
      double squares = 0;
      double independentSquares = 0;
      long stoppedPilots = 0;
      for (int i = 0; i < repetitions; i++) {
        SplittableRandom random = new SplittableRandom(i);
        int[] chosen = chosen(random);
        LossSpread study = study(chosen, pilots);
        Quantile quantile = study.quantile(MOST, CONFIDENCE);
        held[0] += holds(study.quantile(MEDIAN, CONFIDENCE), truth.loss(MEDIAN));
        held[1] += holds(quantile, most);
        held[2] += holds(study.arrested(CONFIDENCE), truth.arrestedShare());
        held[3] += holds(study.shareLosing(most, CONFIDENCE), truth.shareLosing(most));
        LossSpread independent = independent(random, pilots);
        held[4] += holds(independent.quantile(MOST, CONFIDENCE), most);
        half[i] = quantile.halfWidth();
        widths += quantile.halfWidth();
        squares += square(quantile.value() - most);
        independentSquares += square(independent.loss(MOST) - most);
      }
      Arrays.sort(half);
      double asked = half[repetitions / 2];
      for (int i = 0; i < repetitions; i++) {
        int[] chosen = chosen(new SplittableRandom(i));
        Quantile half = study(chosen, PILOTS[0] / 2).quantile(MOST, CONFIDENCE);
        Quantile quantile = study(chosen, PILOTS[0]).quantile(MOST, CONFIDENCE);
        int flown = PILOTS[0];
        while (quantile.low() < Double.POSITIVE_INFINITY
            && (quantile.halfWidth() > asked || half.halfWidth() > 2 * asked)
            && flown < PILOTS[PILOTS.length - 1]) {
          flown *= 2;
          half = quantile;
          quantile = study(chosen, flown).quantile(MOST, CONFIDENCE);
        }
        held[5] += holds(quantile, most);
        stoppedPilots += flown;
      }
      return String.format(
          Locale.ROOT,
          "%d | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f (median %.1f) | %.1f | %.1f | %.1f | %.1f |"
              + " %d",
          pilots,
          percent(held[0]),
          percent(held[1]),
          percent(held[2]),
          percent(held[3]),
          percent(held[4]),
          feet(widths / repetitions),
          feet(asked),
          feet(Math.sqrt(squares / repetitions)),
          feet(Math.sqrt(independentSquares / repetitions)),
          independentSquares / squares,
          percent(held[5]),
          stoppedPilots / repetitions);
    }

    private double percent(int held) {
      return 100.0 * held / repetitions;
    }

    /** Eight different sets. */
    private int[] chosen(SplittableRandom random) {
      return random.ints(0, sets).distinct().limit(SobolStream.SETS).toArray();
    }

    private LossSpread study(int[] chosen, int pilots) {
      Ending[] ended = new Ending[pilots];
      double[] lost = new double[pilots];
      for (int i = 0; i < pilots; i++) {
        int set = chosen[i % SobolStream.SETS];
        ended[i] = endings[set][i / SobolStream.SETS];
        lost[i] = losses[set][i / SobolStream.SETS];
      }
      return LossSpread.of(ended, lost, Drawing.SOBOL);
    }

    private LossSpread independent(SplittableRandom random, int pilots) {
      Ending[] ended = new Ending[pilots];
      double[] lost = new double[pilots];
      for (int i = 0; i < pilots; i++) {
        int set = random.nextInt(sets);
        int pilot = random.nextInt(OF_A_SET);
        ended[i] = endings[set][pilot];
        lost[i] = losses[set][pilot];
      }
      return LossSpread.of(ended, lost);
    }
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
