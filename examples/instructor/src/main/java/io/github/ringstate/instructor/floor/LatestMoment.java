package io.github.ringstate.instructor.floor;

import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.Technique;
import java.util.OptionalDouble;

/**
 * The latest moment at which a technique still works from a height.
 *
 * @param conditions craft, mass and air
 * @param recovery what the pilots were briefed to do
 * @param delayS the delay up to which the share still recovered with the margin, s; empty if not
 *     even without delay did so many
 */
record LatestMoment(Conditions conditions, Technique recovery, OptionalDouble delayS) {}
