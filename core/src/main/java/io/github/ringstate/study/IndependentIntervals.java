package io.github.ringstate.study;

import java.util.Arrays;

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
    int losing = (int) Arrays.stream(sorted).filter(loss -> loss >= height).count();
    return Share.of(losing, sorted.length, confidence);
  }
}
