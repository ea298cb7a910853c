package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.Technique;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of a loss table for machines: the standard technique, many pilots, or both.
 *
 * @param conditions craft, mass and air
 * @param recovery what was done
 * @param delay the delay, s; empty if each pilot had one of their own
 * @param standard the flight of the standard technique; empty if the line has no one delay
 * @param pilots the flights of the pilots; empty without pilots
 */
record LossLine(
    Conditions conditions,
    Technique recovery,
    OptionalDouble delay,
    Optional<LossRow> standard,
    Optional<PilotRow> pilots) {}
