package io.github.ringstate.recording;

import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Readings that are not what the filter expects. A single one is an outlier and is left out.
 * Several in a row that agree with each other are a step of the level from which the height is
 * counted, as a receiver makes when it gains or loses a satellite; the step is put before the first
 * of them.
 */
final class Surprises {

  /** Beyond so many standard deviations a reading is a surprise. */
  static final double GATE = 5;

  /** So many in a row that agree are a step. */
  private static final int AGREEING = 3;

  /** After so many in a row the filter starts afresh at their level, whether they agree or not. */
  private static final int IN_A_ROW = 8;

  private final Map<Channel, SortedMap<Integer, Double>> steps = new EnumMap<>(Channel.class);
  private final Map<Channel, SortedSet<Integer>> outliers = new EnumMap<>(Channel.class);
  private final Map<Channel, Row> rows = new EnumMap<>(Channel.class);
  private int stepFound = -1;

  /** Surprises of one channel, one straight after the other. */
  private static final class Row {
    private int first;
    private int count;
    private double lowest;
    private double highest;

    void add(int index, double innovation) {
      if (count == 0) {
        first = index;
        lowest = innovation;
        highest = innovation;
      }
      count++;
      lowest = Math.min(lowest, innovation);
      highest = Math.max(highest, innovation);
    }
  }

  /** The variance that a step found before adds to the level, m2. */
  double step(Channel channel, int index) {
    SortedMap<Integer, Double> found = steps.get(channel);
    return found == null ? 0 : found.getOrDefault(index, 0.0);
  }

  /** Whether a step of the level was found at a time or before it. */
  boolean hasStepped(Channel channel, int index) {
    SortedMap<Integer, Double> found = steps.get(channel);
    return found != null && found.firstKey() <= index;
  }

  /** Whether the filter takes a reading; {@link #stepFound} may change with it. */
  boolean takes(Channel channel, int index, double innovation, double ratio, double deviation) {
    Row row = rows.computeIfAbsent(channel, any -> new Row());
    if (Math.abs(ratio) <= GATE) {
      row.count = 0;
      return true;
    }
    row.add(index, innovation);
    outliers.computeIfAbsent(channel, any -> new TreeSet<>()).add(index);
    boolean agree = row.count >= AGREEING && row.highest - row.lowest <= 2 * GATE * deviation;
    if (channel != Channel.VERTICAL_SPEED && (agree || row.count >= IN_A_ROW)) {
      double size = Math.max(Math.abs(row.lowest), Math.abs(row.highest));
      steps
          .computeIfAbsent(channel, any -> new TreeMap<>())
          .merge(row.first, size * size, Double::sum);
      stepFound = row.first;
    }
    return false;
  }

  /**
   * Where the step begins that the last reading showed, or negative. What was surprising from there
   * on is forgotten, for the filter goes there again.
   */
  int stepFound() {
    int from = stepFound;
    if (from >= 0) {
      stepFound = -1;
      rows.clear();
      outliers.values().forEach(found -> found.removeIf(index -> index >= from));
      outliers.values().removeIf(found -> found.isEmpty());
    }
    return from;
  }

  /** The first readings after a step of the level, by channel. */
  Map<Channel, SortedSet<Integer>> steps() {
    Map<Channel, SortedSet<Integer>> found = new EnumMap<>(Channel.class);
    steps.forEach((channel, sizes) -> found.put(channel, new TreeSet<>(sizes.keySet())));
    return found;
  }

  /** Readings that were left out, by channel. */
  Map<Channel, SortedSet<Integer>> outliers() {
    return outliers;
  }
}
