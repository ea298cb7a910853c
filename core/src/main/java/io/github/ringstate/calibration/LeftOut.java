package io.github.ringstate.calibration;

import io.github.ringstate.recording.Estimate;

/**
 * A test: the loss of an encounter that was left out of the fit, predicted from the others. Of the
 * encounter itself only what was flown is taken: its entry up to the onset, and after it ground
 * speed, attitude and lever, but neither height nor vertical speed.
 *
 * @param name the demonstration
 * @param recordedLoss altitude lost from the recorded onset, m
 * @param predicted the middle prediction, m
 * @param low what 2.5 in 100 predictions are below, the error of the recorded loss included, m
 * @param high what 2.5 in 100 predictions are above, m
 */
public record LeftOut(
    String name, Estimate recordedLoss, double predicted, double low, double high) {

  /**
   * Whether the prediction says anything: it does not if most of what is left open cannot be flown,
   * or too many of the descents are not arrested.
   *
   * @return true if the band has two ends
   */
  public boolean tells() {
    return Double.isFinite(low) && Double.isFinite(high);
  }

  /**
   * Whether the recorded loss lies within the band of 95 in 100 predictions.
   *
   * @return true if it does; false too if the band does not {@linkplain #tells tell}
   */
  public boolean within() {
    return tells() && recordedLoss.value() >= low && recordedLoss.value() <= high;
  }
}
