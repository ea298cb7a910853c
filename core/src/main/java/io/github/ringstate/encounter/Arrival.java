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

  /** What a tolerance of the integration makes of a state, SI units. */
  private static final double ROUNDING = 1e-6;

  /** Whether another differs in height alone. */
  boolean isLike(Arrival other) {
    boolean alike = onset == other.onset && Math.abs(time - other.time) <= ROUNDING;
    for (int i = 0; i < state.length && alike; i++) {
      alike = i == State.UP || Math.abs(state[i] - other.state[i]) <= ROUNDING;
    }
    return alike;
  }

  double height() {
    return state[State.UP];
  }
}
