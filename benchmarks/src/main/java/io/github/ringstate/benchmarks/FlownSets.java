package io.github.ringstate.benchmarks;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.SobolStream;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotStudy;
import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Many sets of evenly spread pilots, each scrambled anew, flown once. Any eight of them are a
 * study; all together are the truth; single pilots chosen at random are a study of independent
 * ones.
 */
final class FlownSets {

  /** Pilots of a set: a study of eight sets has 1,024. */
  static final int OF_A_SET = 128;

  private final Ending[][] endings;
  private final double[][] losses;
  private final LossSpread truth;

  /**
   * Flies the sets.
   *
   * @param study who flies what; its seed plays no part
   * @param sets how many sets, a multiple of eight
   */
  FlownSets(PilotStudy study, int sets) {
    endings = new Ending[sets][OF_A_SET];
    losses = new double[sets][OF_A_SET];
    BulkFlight flight = new BulkFlight(Approach.fly(study.base(), Simulator.fast()));
    for (int set = 0; set < sets; set++) {
      PilotStudy seeded =
          new PilotStudy(study.base(), study.pilots(), study.delays(), set / SobolStream.SETS);
      for (int pilot = 0; pilot < OF_A_SET; pilot++) {
        Encounter flown =
            seeded.encounter((long) pilot * SobolStream.SETS + set % SobolStream.SETS);
        endings[set][pilot] = flight.fly(flown.recovery(), flown.recognition());
        losses[set][pilot] = flight.altitudeLoss();
      }
    }
    truth =
        LossSpread.of(
            Arrays.stream(endings).flatMap(Arrays::stream).toArray(Ending[]::new),
            Arrays.stream(losses).flatMapToDouble(Arrays::stream).toArray());
  }

  /** All pilots. */
  LossSpread truth() {
    return truth;
  }

  /** Eight different sets. */
  int[] choose(SplittableRandom random) {
    return random.ints(0, endings.length).distinct().limit(SobolStream.SETS).toArray();
  }

  /** The first so many pilots of eight sets. */
  LossSpread study(int[] chosen, int pilots) {
    Ending[] ended = new Ending[pilots];
    double[] lost = new double[pilots];
    for (int i = 0; i < pilots; i++) {
      int set = chosen[i % SobolStream.SETS];
      ended[i] = endings[set][i / SobolStream.SETS];
      lost[i] = losses[set][i / SobolStream.SETS];
    }
    return LossSpread.of(ended, lost, Drawing.SOBOL);
  }

  /** So many pilots, each by itself. */
  LossSpread independent(SplittableRandom random, int pilots) {
    Ending[] ended = new Ending[pilots];
    double[] lost = new double[pilots];
    for (int i = 0; i < pilots; i++) {
      int set = random.nextInt(endings.length);
      int pilot = random.nextInt(OF_A_SET);
      ended[i] = endings[set][pilot];
      lost[i] = losses[set][pilot];
    }
    return LossSpread.of(ended, lost);
  }
}
