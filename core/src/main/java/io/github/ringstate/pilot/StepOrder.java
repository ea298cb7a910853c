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

  /** The attitude to command, rad. */
  double attitude(Cockpit seen, double present, double wanted) {
    return share(seen, attitudeAt, present, wanted);
  }

  /** The collective to command, rad. */
  double collective(Cockpit seen, double wanted) {
    return share(seen, collectiveAt, seen.collective(), wanted);
  }

  private static double share(Cockpit seen, double at, double present, double wanted) {
    if (at == 0) {
      return wanted;
    }
    double t = Math.min(Math.max((seen.sinceTechniqueBegan() - at) / FADE, 0), 1);
    return present + t * t * (3 - 2 * t) * (wanted - present);
  }
}
