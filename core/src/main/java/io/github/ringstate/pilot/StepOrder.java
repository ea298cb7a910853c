package io.github.ringstate.pilot;

import io.github.ringstate.flight.Cockpit;

/**
 * Which hand moves first. The later one keeps what is there until its time has come, and then moves
 * as commanded, faded in over a moment so that the right-hand side of the equations stays smooth.
 */
final class StepOrder {

  /** Time in which the later hand comes in, s (assumed). */
  private static final double FADE = 0.2;

  private final double collectiveAt;
  private final double attitudeAt;

  /**
   * Creates it.
   *
   * @param collectiveLater how much later the collective moves than the cyclic, s; earlier if
   *     negative
   */
  StepOrder(double collectiveLater) {
    collectiveAt = Math.max(0, collectiveLater);
    attitudeAt = Math.max(0, -collectiveLater);
  }

  double attitude(Cockpit seen, double present, double wanted) {
    return present + share(seen, attitudeAt) * (wanted - present);
  }

  double collective(Cockpit seen, double wanted) {
    return seen.collective() + share(seen, collectiveAt) * (wanted - seen.collective());
  }

  private static double share(Cockpit seen, double at) {
    if (at == 0) {
      return 1;
    }
    double t = Math.min(Math.max((seen.sinceRecognition() - at) / FADE, 0), 1);
    return t * t * (3 - 2 * t);
  }
}
