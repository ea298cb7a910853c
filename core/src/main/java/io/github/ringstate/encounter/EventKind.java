package io.github.ringstate.encounter;

/** What may happen in a flight. */
public enum EventKind implements Happening {
  /** The boundary of the ring state is crossed inward, the descent still building. */
  ONSET("ring state begins"),
  /** The boundary of the ring state is crossed outward. */
  RING_STATE_LEFT("ring state left"),
  /** The boundary of the ring state is crossed inward again. */
  RING_STATE_ENTERED_AGAIN("ring state entered again"),
  /** The pilot recognises the ring state and acts. */
  RECOGNITION("recognition"),
  /** A phase of the recovery ends. */
  PHASE_END("phase ends"),
  /** The vertical speed rises through zero. */
  ARREST("descent arrested"),
  /** The craft is 20 ft above the lowest point. */
  CLEAR("20 ft above the lowest point"),
  /** The craft touches the ground. */
  GROUND("ground contact"),
  /** The rate of descent has a greatest value. */
  FASTEST_DESCENT("fastest descent"),
  /** The rotor slows below its power-on minimum, where the low-speed warning is. */
  LOW_ROTOR_SPEED("low rotor speed"),
  /**
   * The rotor has slowed to half of its nominal speed. There its blades would have to work at four
   * times their blade loading to carry the craft, which they cannot, and the model ends.
   */
  ROTOR_TOO_SLOW("rotor at half of its speed: the model ends"),
  /** The rotor turns faster than its power-off maximum. */
  HIGH_ROTOR_SPEED("high rotor speed"),
  /** A limit begins to hold the pilot back. */
  LIMIT_BINDS("a limit binds"),
  /** What the pilot may notice is there. */
  CUE("cue noticed"),
  /** The thrust falls below half of the weight. */
  LOW_THRUST("thrust below half of the weight"),
  /** An event of the user's own; see {@link FlightEvent}. */
  OWN("event of one's own");

  private final String label;

  EventKind(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
