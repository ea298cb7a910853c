package io.github.ringstate.instructor.review;

import io.github.ringstate.pilot.Technique;
import io.github.ringstate.recording.Estimate;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Movement;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One descent of a recorded flight.
 *
 * @param number which one, from 1
 * @param found what the recording shows
 * @param model what the model makes of it
 */
record FlownDescent(int number, FoundEncounter found, ModelledDescent model) {

  /** From onset to the pilot's first movement, s; empty if none is recorded. */
  OptionalDouble delay() {
    return value(found.delay());
  }

  /** From onset to the arrest, s; empty if it is not recorded. */
  OptionalDouble timeToArrest() {
    OptionalDouble arrest = value(found.arrestTime());
    return arrest.isPresent()
        ? OptionalDouble.of(arrest.getAsDouble() - found.onsetTime().value())
        : arrest;
  }

  /** The recovery that the pilot's movement looks like. */
  Optional<Technique> recovery() {
    return found.movement().flatMap(Movement::technique);
  }

  private static OptionalDouble value(Optional<Estimate> estimate) {
    return estimate.map(one -> OptionalDouble.of(one.value())).orElse(OptionalDouble.empty());
  }
}
