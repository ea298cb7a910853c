package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.State;
import io.github.ringstate.integrate.EventLog;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An event that happened.
 *
 * @param kind what happened
 * @param label what happened, for people: that of the kind, or the name of an event of one's own
 * @param time when, s since the flight began
 * @param height height then, m
 * @param verticalSpeed vertical speed then, m/s, positive up
 */
public record Occurrence(
    EventKind kind, String label, double time, double height, double verticalSpeed) {

  /** All that a log holds of a flight, in order. */
  static List<Occurrence> listOf(EventLog<Happening> log) {
    return IntStream.range(0, log.size())
        .mapToObj(
            i ->
                new Occurrence(
                    log.kind(i) instanceof EventKind kind ? kind : EventKind.OWN,
                    log.kind(i).label(),
                    log.time(i),
                    log.state(i, State.UP),
                    log.state(i, State.SPEED_UP)))
        .toList();
  }
}
