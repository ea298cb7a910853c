package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.pilot.Technique;
import java.util.OptionalDouble;

/**
 * Many pilots in one line of a loss table.
 *
 * @param conditions craft, mass and air
 * @param entry the entry's name
 * @param recovery what the pilots were briefed to do
 * @param delayS the delay of all of them, s; empty if each had one of their own
 * @param losses what they lost
 */
record PilotRow(
    Conditions conditions,
    String entry,
    Technique recovery,
    OptionalDouble delayS,
    PilotLosses losses) {}
