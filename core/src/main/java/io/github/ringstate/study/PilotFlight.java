package io.github.ringstate.study;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.quantity.ParameterSet;

/**
 * What one pilot of a study was like and lost.
 *
 * @param number the pilot's number, from 0
 * @param encounter what was flown, with the delay, the recovery and the disturbances of this pilot
 * @param outcome what came of it, without the occurrences on the way
 */
public record PilotFlight(long number, Encounter encounter, Outcome outcome) {

  /**
   * The delay.
   *
   * @return from the start of the clock of the recognition to the pilot's action, s
   */
  public double delay() {
    return encounter.delay();
  }

  /**
   * The numbers of this pilot's technique.
   *
   * @return {@link io.github.ringstate.pilot.Recovery#numbers()} of what was flown; empty for a
   *     recovery that does not say
   */
  public ParameterSet drawn() {
    return encounter.recovery().numbers();
  }
}
