package io.github.ringstate.instructor.boundary;

import java.util.OptionalDouble;

/**
 * The ring state at one airspeed by one criterion.
 *
 * @param criterion the criterion's name
 * @param airspeed edgewise airspeed, m/s
 * @param onset rate of descent at which a slow descent enters, m/s, positive
 * @param exit rate of descent at which a fast descent leaves, m/s, positive; empty where the
 *     criterion knows no exit
 */
record BoundaryRow(String criterion, double airspeed, double onset, OptionalDouble exit) {}
