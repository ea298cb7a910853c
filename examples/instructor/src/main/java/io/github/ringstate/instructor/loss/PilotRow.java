package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.pilot.Technique;
import java.util.OptionalDouble;

/**
 * Many pilots in one line of a loss table.
 *
 * @param recovery what the pilots were briefed to do
 * @param delay the delay of all of them, s; empty if each had one of their own
 * @param losses what they lost
 */
record PilotRow(Technique recovery, OptionalDouble delay, PilotLosses losses) {}
