package io.github.ringstate.cluster;

import io.github.ringstate.cluster.portion.FlownPortion;
import java.util.List;
import java.util.Locale;

/**
 * What a run cost, for those who plan the next.
 *
 * @param points how many points this run flew
 * @param seconds from the first task's start to the last one's end, s
 * @param processorSeconds processor time of all threads that flew, s
 */
record FlightCost(long points, double seconds, double processorSeconds) {

  /** Nothing was left to fly. */
  static final FlightCost NONE = new FlightCost(0, 0, 0);

  static FlightCost of(List<FlownPortion> portions, long nanos) {
    return new FlightCost(
        portions.stream().mapToLong(FlownPortion::points).sum(),
        nanos / 1e9,
        portions.stream().mapToLong(FlownPortion::processorNanos).sum() / 1e9);
  }

  /** A sentence. */
  String text() {
    return points == 0
        ? "all points had been flown before"
        : String.format(
            Locale.ROOT,
            "flew %d points in %.1f s, %.0f a second; %.1f s of processor time, %.0f a second of a"
                + " core",
            points,
            seconds,
            points / seconds,
            processorSeconds,
            points / processorSeconds);
  }
}
