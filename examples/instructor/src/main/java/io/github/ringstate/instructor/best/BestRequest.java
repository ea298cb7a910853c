package io.github.ringstate.instructor.best;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Approach;
import java.util.List;

/**
 * What best recoveries are asked for.
 *
 * @param conditions craft, mass and air
 * @param approach how the flight comes to the ring state
 * @param delays the delays, s
 * @param power the greatest power that the best recovery sets, over the continuous power
 * @param powerInWords the same in words
 * @param seed the seed of the search
 */
record BestRequest(
    Conditions conditions,
    Approach approach,
    List<Double> delays,
    double power,
    String powerInWords,
    long seed) {

  BestRequest {
    delays = List.copyOf(delays);
  }

  /** The encounter with a delay; its recovery plays no part. */
  Encounter encounter(double delay) {
    return approach.encounter(conditions.craft(), conditions.air()).withDelay(delay);
  }
}
