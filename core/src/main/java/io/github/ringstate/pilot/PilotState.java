package io.github.ringstate.pilot;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.distribution.RealDistribution;

/**
 * The state a pilot is in, and the delay that goes with it. Medians lean on published reaction
 * times where there are any; every 90 per cent point is assumed, since no source gives a
 * distribution for helicopter pilots.
 */
public enum PilotState {
  /** Expects the ring state, hands on the controls. */
  PRIMED(
      "primed",
      0.75,
      1.25,
      "about 1 s is held for an active pilot (UK military practice, second-hand; 14 CFR 29.143"
          + " takes 1 s or normal reaction); median and 90 per cent point assumed"),
  /** Flies attentively, hands on the controls. */
  ATTENTIVE(
      "attentive",
      1.5,
      2.5,
      "1.5 s for an attentive pilot, hands on (UK military practice, second-hand); 90 per cent"
          + " point assumed"),
  /** Looks elsewhere, as through a camera's window or at a subject on the ground. */
  DISTRACTED(
      "distracted",
      2.5,
      5,
      "assumed: beyond the 2 s held for a pilot who must first notice (UK military practice,"
          + " second-hand)"),
  /** Surprised by what happens. */
  STARTLED(
      "startled",
      2.65,
      4,
      "average reaction to a startle 2.3 to 3 s (FAA Safety Briefing, March/April 2016, quoted);"
          + " 90 per cent point assumed");

  private final String label;
  private final double median;
  private final double ninety;
  private final String origin;

  PilotState(String label, double median, double ninety, String origin) {
    this.label = label;
    this.median = median;
    this.ninety = ninety;
    this.origin = origin;
  }

  /**
   * Finds a state.
   *
   * @param label its word
   * @return the state, or empty if there is none of that word
   */
  public static Optional<PilotState> named(String label) {
    return Arrays.stream(values()).filter(state -> state.label.equals(label)).findFirst();
  }

  /**
   * The state in a word.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * The delay that half of the pilots in this state do not exceed.
   *
   * @return the median, s
   */
  public double median() {
    return median;
  }

  /**
   * The delay that nine in ten pilots in this state do not exceed.
   *
   * @return the 90 per cent point, s
   */
  public double ninetyPercent() {
    return ninety;
  }

  /**
   * Where the numbers come from.
   *
   * @return a sentence
   */
  public String origin() {
    return origin;
  }

  /**
   * The distribution of delays.
   *
   * @return log-normal, in s
   */
  public RealDistribution delays() {
    return Delays.logNormal(median, ninety);
  }
}
