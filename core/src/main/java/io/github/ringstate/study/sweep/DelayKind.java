package io.github.ringstate.study.sweep;

import io.github.ringstate.pilot.PilotState;
import org.hipparchus.distribution.RealDistribution;

/**
 * A distribution of delays that a sweep may name as the state of its pilots.
 *
 * @param name lower case, words joined by hyphens
 * @param median the delay where no pilots are drawn, s, 0 to 60
 * @param delays the distribution from which each pilot has a delay, s; what is drawn beyond 60 s
 *     counts as 60 s
 */
public record DelayKind(String name, double median, RealDistribution delays) {

  /**
   * A distribution with its own median.
   *
   * @param name lower case, words joined by hyphens
   * @param delays the distribution, s
   * @return the kind
   */
  public static DelayKind of(String name, RealDistribution delays) {
    return new DelayKind(name, delays.inverseCumulativeProbability(0.5), delays);
  }

  static DelayKind of(PilotState state) {
    return new DelayKind(state.label(), state.median(), state.delays());
  }
}
