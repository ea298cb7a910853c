package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.State;

/**
 * Where an approach ended.
 *
 * @param time when, s since the start
 * @param state the state then, in the order of {@link State}, SI units
 * @param onset whether the ring state was entered there, or the search given up
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to an integrator
record Arrival(double time, double[] state, boolean onset) {

  double height() {
    return state[State.UP];
  }
}
