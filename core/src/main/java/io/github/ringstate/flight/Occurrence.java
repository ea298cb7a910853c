package io.github.ringstate.flight;

/**
 * An event that happened.
 *
 * @param kind what happened
 * @param time when, s since the flight began
 * @param height height then, m
 * @param verticalSpeed vertical speed then, m/s, positive up
 */
public record Occurrence(EventKind kind, double time, double height, double verticalSpeed) {

  static Occurrence of(EventKind kind, Motion motion) {
    return new Occurrence(kind, motion.time(), motion.height(), motion.verticalSpeed());
  }
}
