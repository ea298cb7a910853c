package io.github.ringstate.study;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import java.util.OptionalDouble;

/**
 * What the doubt about the form of a fitted model makes of a flight: its loss times a factor. Where
 * that is as much as the height there was, the ground was reached, at a speed that nobody knows. A
 * descent that reached the ground, or was never arrested, stays as it was flown.
 *
 * @param factor the factor
 * @param height height of the onset above the ground, m; empty away from the ground
 */
record FittedLoss(double factor, OptionalDouble height) {

  /** For a model that counts as known. */
  static final FittedLoss AS_FLOWN = new FittedLoss(1, OptionalDouble.empty());

  /** What is lost beside the loss that was flown, m; negative if less is. */
  double more(Ending ending, double loss) {
    return ending == Ending.ARRESTED ? (factor - 1) * loss : 0;
  }

  /** How it ends with a loss, m. */
  Ending ending(Ending flown, double loss) {
    return flown == Ending.ARRESTED && height.isPresent() && loss >= height.getAsDouble()
        ? Ending.GROUND
        : flown;
  }

  Outcome of(Outcome flown) {
    double loss = flown.altitudeLoss().orElse(Double.NaN);
    double more = more(flown.ending(), loss);
    Ending ending = ending(flown.ending(), loss + more);
    return new Outcome(
        ending,
        plus(flown.altitudeLoss(), more),
        plus(flown.lossAfterRecognition(), more),
        flown.peakDescent(),
        ending == flown.ending() ? flown.timeToArrest() : OptionalDouble.empty(),
        flown.impactSpeed(),
        flown.onsetTime(),
        flown.occurrences());
  }

  private static OptionalDouble plus(OptionalDouble loss, double more) {
    return loss.isPresent() ? OptionalDouble.of(loss.getAsDouble() + more) : loss;
  }
}
