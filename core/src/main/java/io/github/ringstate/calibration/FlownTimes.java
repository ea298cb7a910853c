package io.github.ringstate.calibration;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.History;

/**
 * The model's flight at some times. Before its start it is the steady flight from which it starts,
 * and after its end it goes on as it ended.
 */
final class FlownTimes {

  private final Helicopter craft;
  private final double[] beyond;
  private final double[][] flown;

  /**
   * Looks at a flight.
   *
   * @param history the flight
   * @param craft the craft that flew it
   * @param start when it began, s on the clock of the times
   * @param times the times, s
   */
  FlownTimes(History history, Helicopter craft, double start, double... times) {
    this.craft = craft;
    beyond = new double[times.length];
    double[] within = new double[times.length];
    for (int k = 0; k < times.length; k++) {
      double time = times[k] - start;
      within[k] = Math.min(Math.max(time, history.start()), history.end());
      beyond[k] = time - within[k];
    }
    flown = history.values(Series.QUANTITIES, within);
  }

  double value(Series series, int k) {
    return series.flown(flown, k, beyond[k], craft);
  }

  /** Height at the first time less the lowest height at any, m. */
  double loss() {
    double lowest = Double.POSITIVE_INFINITY;
    for (int k = 0; k < beyond.length; k++) {
      lowest = Math.min(lowest, value(Series.HEIGHT, k));
    }
    return value(Series.HEIGHT, 0) - lowest;
  }
}
