package io.github.ringstate.instructor.fly;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.pilot.Technique;

/**
 * One flight that is asked for.
 *
 * @param conditions craft, mass and air
 * @param approach how the flight comes to the ring state
 * @param recovery what the pilot does
 * @param delayS from onset to the pilot's action, s
 * @param stepS time between samples, s
 */
record FlyRequest(
    Conditions conditions, Approach approach, Technique recovery, double delayS, double stepS) {

  /** The encounter, its recovery and delay to be set. */
  Encounter encounter() {
    return approach.encounter(conditions.craft(), conditions.air());
  }
}
