package io.github.ringstate.study;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Confidence intervals of samples that have nothing to do with each other: by order statistics and
 * by the binomial distribution.
 *
 * @param sorted the values in ascending order, at least one
 */
@SuppressWarnings("ArrayRecordComponent") // kept by LossSpread alone
record IndependentIntervals(double[] sorted) implements Intervals {

  @Override
  public Quantile quantile(double share, double confidence) {
    return Quantile.of(sorted, share, confidence);
  }

  @Override
  public Share shareLosing(double height, double confidence) {
    return Share.of(Intervals.losing(sorted, height), sorted.length, confidence);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof IndependentIntervals same && Arrays.equals(sorted, same.sorted);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(sorted);
  }
}
