package io.github.ringstate.instructor.boundary;

import java.util.OptionalDouble;

/**
 * The ring state at one airspeed by one criterion.
 *
 * @param criterion the criterion's name
 * @param airspeedKt airspeed along the disc, kt
 * @param onsetFpm rate of descent at which a slow descent enters, ft/min, positive
 * @param exitFpm rate of descent at which a fast descent leaves, ft/min, positive; empty where the
 *     criterion knows no exit
 */
record BoundaryRow(String criterion, double airspeedKt, double onsetFpm, OptionalDouble exitFpm) {}
