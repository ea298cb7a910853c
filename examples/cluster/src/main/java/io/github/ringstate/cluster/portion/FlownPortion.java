package io.github.ringstate.cluster.portion;

import java.io.Serializable;

/**
 * What it cost to fly a portion.
 *
 * @param points how many points were flown
 * @param processorNanos processor time of the thread that flew, encoded and wrote, ns
 */
public record FlownPortion(int points, long processorNanos) implements Serializable {

  /** A portion whose file was there. */
  public static final FlownPortion THERE = new FlownPortion(0, 0);
}
