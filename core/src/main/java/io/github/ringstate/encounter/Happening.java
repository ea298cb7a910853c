package io.github.ringstate.encounter;

/** What may happen in a flight: an {@link EventKind}, or a {@link FlightEvent} of one's own. */
public sealed interface Happening permits EventKind, FlightEvent {

  /**
   * What happened, for people.
   *
   * @return lower case for what is built in; the name of an event of one's own
   */
  String label();
}
