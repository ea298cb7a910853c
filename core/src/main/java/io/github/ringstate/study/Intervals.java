package io.github.ringstate.study;

import java.util.Arrays;

/** Confidence intervals of what a sample shows; how wide they are depends on how it was drawn. */
interface Intervals {

  /** The loss that a part of the samples does not exceed; see {@link LossSpread#quantile}. */
  Quantile quantile(double share, double confidence);

  /** The part that lost at least a height; see {@link LossSpread#shareLosing(double, double)}. */
  Share shareLosing(double height, double confidence);

  /** How many of some losses are at least a height. */
  static int losing(double[] losses, double height) {
    if (Double.isNaN(height)) {
      throw new IllegalArgumentException("the height must be a number, not NaN");
    }
    return (int) Arrays.stream(losses).filter(loss -> loss >= height).count();
  }
}
