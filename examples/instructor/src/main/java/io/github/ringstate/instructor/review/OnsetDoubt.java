package io.github.ringstate.instructor.review;

import io.github.ringstate.air.Wind;
import io.github.ringstate.recording.RecordedOnset;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.hipparchus.util.FastMath;

/**
 * How the model's loss moves with what a recording does not tell of the onset. A loss is empty
 * twice over: where the model meets no ring state so, and where the descent is not arrested.
 *
 * @param more the loss with the wind one deviation more from behind along the track, m
 * @param less the loss with as much less, m
 * @param noseAhead the loss with the nose along the track, m, where it is taken to point against it
 *     and no heading is recorded; else empty
 */
record OnsetDoubt(
    Optional<OptionalDouble> more,
    Optional<OptionalDouble> less,
    Optional<Optional<OptionalDouble>> noseAhead) {

  /**
   * Flies from other onsets.
   *
   * @param onset what was recorded
   * @param deviation how far the wind may be off, m/s
   * @param headed whether the heading is recorded
   * @param loss the loss from an onset, m
   */
  static OnsetDoubt of(
      RecordedOnset onset,
      double deviation,
      boolean headed,
      Function<RecordedOnset, Optional<OptionalDouble>> loss) {
    boolean tailFirst = onset.ahead() < 0;
    return new OnsetDoubt(
        loss.apply(inWind(onset, deviation)),
        loss.apply(inWind(onset, -deviation)),
        tailFirst && !headed ? Optional.of(loss.apply(turned(onset))) : Optional.empty());
  }

  /** With so much more wind from behind on the track, which is not always where the nose points. */
  private static RecordedOnset inWind(RecordedOnset onset, double more) {
    double track = FastMath.atan2(onset.sideways(), onset.ahead());
    return new RecordedOnset(
        new Wind(
            onset.wind().north() + more * FastMath.cos(track),
            onset.wind().east() + more * FastMath.sin(track)),
        onset.ahead(),
        onset.sideways(),
        onset.verticalSpeed(),
        onset.forward(),
        onset.right(),
        onset.up());
  }

  private static RecordedOnset turned(RecordedOnset onset) {
    return new RecordedOnset(
        new Wind(-onset.wind().north(), -onset.wind().east()),
        -onset.ahead(),
        -onset.sideways(),
        onset.verticalSpeed(),
        -onset.forward(),
        -onset.right(),
        onset.up());
  }
}
