package io.github.ringstate.validation.open;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * How much narrower the band of an outcome, from its 5 to its 95 per cent point, would be if one of
 * the numbers that it depends on were known: expected over what the number may turn out to be.
 *
 * <p>The sample is sorted by the number and cut into {@value #BINS} bins of equal size; within a
 * bin the number is all but known, and the mean of the bins' bands is the band to be expected.
 * Bands of small bins are too narrow by themselves, so that mean is compared with the same from
 * bins of samples taken at random, {@value #SHUFFLES} times. These also say how far chance goes.
 *
 * <p>What several numbers would be worth together is not the sum of what each is worth.
 *
 * @param outcomes the outcomes, finite
 * @param unknown mean band of random bins, in the outcome's unit
 * @param chance standard deviation of that mean over the random cuts
 */
@SuppressWarnings("ArrayRecordComponent") // read only by this record
public record KnownNumber(double[] outcomes, double unknown, double chance) {

  private static final int BINS = 20;
  private static final int SHUFFLES = 200;
  private static final long SEED = 5;

  /**
   * Looks at outcomes of which nothing is known.
   *
   * @param outcomes the outcomes, finite; as many as {@value #BINS} bins take, at least
   * @return what a number is held against
   */
  public static KnownNumber of(double... outcomes) {
    if (Arrays.stream(outcomes).anyMatch(outcome -> !Double.isFinite(outcome))) {
      throw new IllegalArgumentException("an outcome is not finite");
    }
    SplittableRandom random = new SplittableRandom(SEED);
    int[] order = IntStream.range(0, outcomes.length).toArray();
    double[] means = new double[SHUFFLES];
    for (int shuffle = 0; shuffle < SHUFFLES; shuffle++) {
      for (int i = order.length - 1; i > 0; i--) {
        int j = random.nextInt(i + 1);
        int moved = order[i];
        order[i] = order[j];
        order[j] = moved;
      }
      means[shuffle] = meanBand(outcomes, order);
    }
    double mean = Arrays.stream(means).average().orElse(Double.NaN);
    double variance = Arrays.stream(means).map(m -> (m - mean) * (m - mean)).sum() / (SHUFFLES - 1);
    return new KnownNumber(outcomes, mean, Math.sqrt(variance));
  }

  /**
   * What one number is worth.
   *
   * @param number its value with each outcome
   * @return the part by which the band would be narrower, 1 if nothing else mattered; by chance it
   *     may lie a little below 0
   */
  public double narrowing(double... number) {
    return 1 - meanBand(outcomes, order(number)) / unknown;
  }

  /**
   * How far {@link #narrowing} of a number that tells nothing lies from 0 by chance.
   *
   * @return one standard deviation
   */
  public double chanceOfNarrowing() {
    return chance / unknown;
  }

  /** The cases in the order of a number. */
  static int[] order(double... number) {
    return IntStream.range(0, number.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> number[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static double meanBand(double[] outcomes, int[] order) {
    double sum = 0;
    for (int bin = 0; bin < BINS; bin++) {
      int from = (int) ((long) order.length * bin / BINS);
      int to = (int) ((long) order.length * (bin + 1) / BINS);
      sum +=
          Summary.of(Arrays.stream(order, from, to).mapToDouble(i -> outcomes[i]).toArray())
              .width();
    }
    return sum / BINS;
  }
}
