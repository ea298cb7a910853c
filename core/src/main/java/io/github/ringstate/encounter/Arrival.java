package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.State;
import io.github.ringstate.pilot.ControlLaw;

/**
 * Where an approach ended.
 *
 * @param time when, s since the start
 * @param state the state then, in the order of {@link State}, SI units
 * @param onset whether the ring state was entered there, or the search given up
 * @param law what was done with the controls, and is until the pilot acts
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to an integrator
record Arrival(double time, double[] state, boolean onset, ControlLaw law) {

  double height() {
    return state[State.UP];
  }
}
