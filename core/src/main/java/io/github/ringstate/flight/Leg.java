package io.github.ringstate.flight;

import java.util.List;
import java.util.Optional;

/**
 * A part of a flight under one control law.
 *
 * @param time when it ended, s since the flight began
 * @param state the state then, in the order of {@link State}, SI units
 * @param stop the event that ended it, or empty if its time ran out
 * @param occurrences what happened on the way, in order of time, the end included
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to an integrator
public record Leg(
    double time, double[] state, Optional<EventKind> stop, List<Occurrence> occurrences) {}
