package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.State;
import io.github.ringstate.pilot.ControlLaw;
import org.jspecify.annotations.Nullable;

/**
 * Where an approach ended.
 *
 * @param time when, s since the start
 * @param state the state then, in the order of {@link State}, SI units
 * @param end what ended it: the onset of the ring state, or a rotor that is too slow; null if the
 *     search for one was given up
 * @param law what was done with the controls, and is until the pilot acts
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to an integrator
record Arrival(double time, double[] state, @Nullable Happening end, ControlLaw law) {

  /** Whether the ring state was entered there. */
  boolean onset() {
    return end == EventKind.ONSET;
  }

  double height() {
    return state[State.UP];
  }
}
