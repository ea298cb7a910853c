package io.github.ringstate.study;

import io.github.ringstate.chance.SobolStream;
import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Confidence intervals of samples that are evenly spread: their sets are independent of each other,
 * the samples of a set are not.
 *
 * <p>That a share of all samples has a value at or below x is tried by the counts of the sets. Were
 * it so, the count of a set less the share of its size would have mean zero; Student's t tries that
 * over the sets, whatever share of the samples have a value at all. The interval of a quantile
 * holds every x that the trial does not reject, that of a share every share: intervals inverted,
 * which needs no density, and infinite values count like others.
 *
 * <p>A count is a whole number. If its mean is not, it varies at least by f (1 - f), where f is
 * what the mean has behind the point; sets that agree by chance are not taken to vary less.
 *
 * <p>Student's t says nothing where all sets agree that none or all of the samples do something,
 * and little where only a handful do. With fewer than {@link #FEW} of them the interval is that of
 * as many independent samples, the binomial one, which is exact for those and wider than these
 * need: what is spread evenly varies less (the variance of a scrambled net is at most a small
 * multiple of theirs whatever the integrand: Owen, Annals of Statistics 25, 1997).
 */
final class SetIntervals implements Intervals {

  /** One a set. */
  private static final int FEW = SobolStream.SETS;

  /** Halvings that find the end of an interval of shares to the last bit. */
  private static final int HALVINGS = 60;

  /** What whole numbers may differ by after some additions. */
  private static final double ROUNDING = 1e-9;

  private final double[] sorted;
  private final double[][] sets;

  /**
   * Prepares for intervals.
   *
   * @param sorted all values in ascending order, at least one
   * @param sets the values of each set in ascending order
   */
  SetIntervals(double[] sorted, double[][] sets) {
    this.sorted = sorted;
    this.sets = sets;
  }

  @Override
  public Quantile quantile(double share, double confidence) {
    Quantile independent = Quantile.of(sorted, share, confidence);
    if (sorted.length * Math.min(share, 1 - share) < FEW) {
      return independent;
    }
    double greatest = greatest(confidence);
    return new Quantile(share, independent.value(), low(share, greatest), high(share, greatest));
  }

  /** The least value up to which the share may lie; minus infinity if it may lie below all. */
  private double low(double share, double greatest) {
    int[] counts = new int[sets.length];
    if (excess(counts, share) >= -greatest) {
      return Double.NEGATIVE_INFINITY;
    }
    int i = 0;
    do {
      double value = sorted[i];
      for (int set = 0; set < sets.length; set++) {
        while (counts[set] < sets[set].length && sets[set][counts[set]] <= value) {
          counts[set]++;
          i++;
        }
      }
    } while (excess(counts, share) < -greatest);
    return sorted[i - 1];
  }

  /** The greatest value below which the share may lie; infinite if it may lie above all. */
  private double high(double share, double greatest) {
    int[] counts = Arrays.stream(sets).mapToInt(set -> set.length).toArray();
    int i = sorted.length;
    double high = Double.POSITIVE_INFINITY;
    while (excess(counts, share) > greatest) {
      high = sorted[i - 1];
      for (int set = 0; set < sets.length; set++) {
        while (counts[set] > 0 && sets[set][counts[set] - 1] >= high) {
          counts[set]--;
          i--;
        }
      }
    }
    return high;
  }

  @Override
  public Share shareLosing(double height, double confidence) {
    int[] counts = Arrays.stream(sets).mapToInt(set -> Intervals.losing(set, height)).toArray();
    int count = Intervals.losing(sorted, height);
    Share independent = Share.of(count, sorted.length, confidence);
    if (Math.min(count, sorted.length - count) < FEW) {
      return independent;
    }
    double greatest = greatest(confidence);
    double value = independent.value();
    return new Share(value, end(counts, value, 0, greatest), end(counts, value, 1, greatest));
  }

  /** The share farthest from the estimate, on the way to one end, that is not rejected. */
  private double end(int[] counts, double estimate, double to, double greatest) {
    double held = estimate;
    double rejected = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (held + rejected);
      if (Math.abs(excess(counts, middle)) <= greatest) {
        held = middle;
      } else {
        rejected = middle;
      }
    }
    return held;
  }

  /** Student's t of the counts against a share of the sizes; positive if they are greater. */
  private double excess(int[] counts, double share) {
    int n = sets.length;
    double sum = 0;
    double squares = 0;
    double least = 0;
    for (int set = 0; set < n; set++) {
      double mean = share * sets[set].length;
      double more = counts[set] - mean;
      double fraction = mean - Math.floor(mean);
      sum += more;
      squares += more * more;
      least += fraction * (1 - fraction);
    }
    double variance = Math.max((squares - sum * sum / n) * n / (n - 1), least);
    return Math.abs(sum) < ROUNDING ? 0 : sum / Math.sqrt(variance);
  }

  private double greatest(double confidence) {
    return new TDistribution(sets.length - 1.0).inverseCumulativeProbability((1 + confidence) / 2);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SetIntervals same && Arrays.deepEquals(sets, same.sets);
  }

  @Override
  public int hashCode() {
    return Arrays.deepHashCode(sets);
  }
}
