package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.chance.SobolStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Sobol indices: which share of the variance of a result each of its inputs accounts for, all of
 * them varying at once and independently.
 *
 * <p>First-order indices by Saltelli's estimator, total ones by Jansen's (Saltelli, Annoni, Azzini,
 * Campolongo, Ratto and Tarantola, Computer Physics Communications 181, 2010, table 2, from memory;
 * Jansen, Computer Physics Communications 117, 1999). The inputs are drawn in {@link
 * SobolStream#SETS} independent sets, each spread evenly; the indices are the means over the sets,
 * and the 95 % confidence intervals are Student's from how the sets differ.
 *
 * @param indices one for each input, in order
 * @param mean the mean of the result
 * @param variance its variance
 * @param evaluations how often the result was worked out
 */
public record SobolIndices(List<Index> indices, double mean, double variance, long evaluations) {

  /** The fewest samples: eight in each of eight sets. */
  public static final int FEWEST_SAMPLES = 64;

  /** The most samples. */
  public static final int MOST_SAMPLES = 1 << 24;

  /** The greatest number of inputs: a sample has two numbers for each. */
  public static final int MOST_INPUTS = 32;

  /** Student's t for 95 % and seven degrees of freedom (any table). */
  private static final double STUDENT = 2.365;

  /**
   * What one input accounts for.
   *
   * @param first the share of the variance that it takes by itself
   * @param firstHalfWidth half of the 95 % confidence interval of the first
   * @param total the share that it has a part in, together with others
   * @param totalHalfWidth half of the 95 % confidence interval of the total
   */
  public record Index(double first, double firstHalfWidth, double total, double totalHalfWidth) {}

  /** Copies the list. */
  public SobolIndices {
    indices = List.copyOf(indices);
  }

  /**
   * Estimates the indices of a result.
   *
   * @param result the result for inputs that are uniform between 0 and 1; finite
   * @param inputs how many inputs, 1 to 32
   * @param samples how many samples, 64 to 16,777,216, rounded up to eight times a power of two;
   *     the result is worked out (inputs + 2) times as often
   * @param seed the seed
   * @return the indices
   * @throws ArithmeticException if the result is not finite or does not vary
   */
  public static SobolIndices of(
      ToDoubleFunction<double[]> result, int inputs, int samples, long seed) {
    if (!(inputs >= 1 && inputs <= MOST_INPUTS)) {
      throw new IllegalArgumentException(
          "the inputs must be 1 to " + MOST_INPUTS + ", not " + inputs);
    }
    if (!(samples >= FEWEST_SAMPLES && samples <= MOST_SAMPLES)) {
      throw new IllegalArgumentException(
          "the samples must be " + FEWEST_SAMPLES + " to " + MOST_SAMPLES + ", not " + samples);
    }
    int all = Drawing.SOBOL.samples(samples);
    List<Sums> sets = new ArrayList<>();
    for (int set = 0; set < SobolStream.SETS; set++) {
      sets.add(new Sums(inputs));
    }
    for (int sample = 0; sample < all; sample++) {
      RandomStream draws = Drawing.SOBOL.stream(seed, sample);
      double[] one = drawn(draws, inputs);
      double[] other = drawn(draws, inputs);
      Sums sums = sets.get(sample % SobolStream.SETS);
      double a = finite(result.applyAsDouble(one.clone()));
      double b = finite(result.applyAsDouble(other.clone()));
      sums.add(a, b);
      for (int i = 0; i < inputs; i++) {
        double[] mixed = one.clone();
        mixed[i] = other[i];
        sums.mixed(i, a, b, finite(result.applyAsDouble(mixed)));
      }
    }
    return together(sets, inputs, (long) all * (inputs + 2));
  }

  private static double[] drawn(RandomStream draws, int inputs) {
    double[] point = new double[inputs];
    for (int i = 0; i < inputs; i++) {
      point[i] = draws.uniform();
    }
    return point;
  }

  private static double finite(double result) {
    if (!Double.isFinite(result)) {
      throw new ArithmeticException("the result must be finite to have a variance, not " + result);
    }
    return result;
  }

  private static SobolIndices together(List<Sums> sets, int inputs, long evaluations) {
    List<Index> indices = new ArrayList<>();
    for (int i = 0; i < inputs; i++) {
      int input = i;
      double[] first = sets.stream().mapToDouble(set -> set.first(input)).toArray();
      double[] total = sets.stream().mapToDouble(set -> set.total(input)).toArray();
      indices.add(new Index(mean(first), halfWidth(first), mean(total), halfWidth(total)));
    }
    return new SobolIndices(
        indices,
        mean(sets.stream().mapToDouble(Sums::mean).toArray()),
        mean(sets.stream().mapToDouble(Sums::variance).toArray()),
        evaluations);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double halfWidth(double[] values) {
    double mean = mean(values);
    double sum = 0;
    for (double value : values) {
      sum += (value - mean) * (value - mean);
    }
    return STUDENT * Math.sqrt(sum / (values.length - 1) / values.length);
  }

  /** What one set of samples adds up to; results count from the first one, for precision. */
  private static final class Sums {

    private final double[] first;
    private final double[] changes;
    private final double[] total;
    private double origin = Double.NaN;
    private long count;
    private double sum;
    private double squares;

    Sums(int inputs) {
      first = new double[inputs];
      changes = new double[inputs];
      total = new double[inputs];
    }

    void add(double a, double b) {
      if (count == 0) {
        origin = a;
      }
      count++;
      sum += (a - origin) + (b - origin);
      squares += (a - origin) * (a - origin) + (b - origin) * (b - origin);
    }

    void mixed(int input, double a, double b, double mixed) {
      first[input] += (b - origin) * (mixed - a);
      changes[input] += mixed - a;
      total[input] += 0.5 * (a - mixed) * (a - mixed);
    }

    double mean() {
      return origin + sum / (2 * count);
    }

    double variance() {
      double offset = sum / (2 * count);
      double variance = squares / (2 * count) - offset * offset;
      if (!(variance > 0)) {
        throw new ArithmeticException("the result does not vary");
      }
      return variance;
    }

    double first(int input) {
      // as if results had been counted from their mean, which takes most of the noise out
      double offset = sum / (2 * count);
      return (first[input] - offset * changes[input]) / count / variance();
    }

    double total(int input) {
      return total[input] / count / variance();
    }
  }
}
