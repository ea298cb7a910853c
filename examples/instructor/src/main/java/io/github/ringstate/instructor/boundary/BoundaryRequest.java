package io.github.ringstate.instructor.boundary;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.ParameterSet;
import java.util.Optional;

/**
 * What boundaries are asked for.
 *
 * @param conditions craft, mass and air
 * @param step step of airspeed from one line to the next, m/s
 * @param flight the flight to draw; empty for none
 * @param drawn whether a picture is wanted
 * @param limits the limits that are taught
 */
record BoundaryRequest(
    Conditions conditions,
    double step,
    Optional<Flight> flight,
    boolean drawn,
    ParameterSet limits) {

  /**
   * A flight to draw.
   *
   * @param approach how it comes to the ring state
   * @param recovery what the pilot does
   * @param delay from onset to the pilot's action, s
   */
  record Flight(Approach approach, Technique recovery, double delay) {

    /** The encounter with a craft in some air. */
    Encounter encounter(Conditions conditions) {
      return approach
          .encounter(conditions.craft(), conditions.air())
          .withRecovery(recovery.standard())
          .withDelay(delay);
    }
  }
}
