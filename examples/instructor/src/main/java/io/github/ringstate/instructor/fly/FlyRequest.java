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
 * @param delay from onset to the pilot's action, s
 * @param step time between samples, s
 * @param lesson whether every recovery is to be flown after every delay too
 * @param terrain what stands in the way, on the page for the classroom
 */
record FlyRequest(
    Conditions conditions,
    Approach approach,
    Technique recovery,
    double delay,
    double step,
    boolean lesson,
    Terrain terrain) {

  /** The encounter, its recovery and delay to be set. */
  Encounter encounter() {
    return approach.encounter(conditions.craft(), conditions.air());
  }

  /** The encounter with its recovery and delay. */
  Encounter flown() {
    return encounter().withRecovery(recovery.standard()).withDelay(delay);
  }
}
