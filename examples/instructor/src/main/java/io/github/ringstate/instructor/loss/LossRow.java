package io.github.ringstate.instructor.loss;

import io.github.ringstate.calibration.FittedBands;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.instructor.pilots.FallThrough;
import io.github.ringstate.pilot.Technique;
import java.util.Optional;

/**
 * One flight of a loss table.
 *
 * @param recovery what the pilot did
 * @param delay from onset to the pilot's action, s
 * @param outcome what came of it
 * @param sensitive whether it is on an edge between two outcomes
 * @param fitted what the craft's fit leaves open of the loss; empty for a craft that was not
 *     fitted, and for what is no way out
 */
record LossRow(
    Technique recovery,
    double delay,
    Outcome outcome,
    boolean sensitive,
    Optional<FittedBands> fitted) {

  boolean isArrested() {
    return ending() == Ending.ARRESTED;
  }

  Ending ending() {
    return outcome.ending();
  }

  /** Whether the craft left the ring state by falling through it. */
  boolean fellThrough() {
    return FallThrough.is(outcome);
  }

  /** What stands behind a figure that is not known well. */
  String mark() {
    return sensitive ? "*" : "";
  }

  /** The height lost, m, of a flight that lost some. */
  double loss() {
    return outcome.altitudeLoss().getAsDouble();
  }
}
