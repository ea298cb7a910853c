package io.github.ringstate.pilot;

/**
 * Which hand moves first, counted from the beginning of the technique. The later one keeps what is
 * there until its time has come, and then moves as commanded, faded in over a moment so that the
 * right-hand side of the equations stays smooth.
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

  /** The attitude to command, rad, in a phase of the technique. */
  double attitude(int phase, Cockpit seen, double present, double wanted) {
    return share(phase, seen, attitudeAt, present, wanted);
  }

  /** The collective to command, rad, in a phase of the technique. */
  double collective(int phase, Cockpit seen, double wanted) {
    return share(phase, seen, collectiveAt, seen.collective(), wanted);
  }

  private static double share(int phase, Cockpit seen, double at, double present, double wanted) {
    if (at == 0) {
      return wanted;
    }
    // The technique may be part of another; its own first phase is as far back as its own number
    // says.
    double since = seen.sincePhase(seen.phase() - phase);
    double t = Math.min(Math.max((since - at) / FADE, 0), 1);
    return present + t * t * (3 - 2 * t) * (wanted - present);
  }
}
