package io.github.ringstate.recording;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A flight as instruments wrote it down: times, and for each {@link Channel} a value at each time
 * or none. Immutable; what an instrument does not give is not a number (NaN) at that time.
 */
public final class Recording {

  private final double[] time;
  private final Map<Channel, double[]> values = new EnumMap<>(Channel.class);

  /**
   * Creates a recording.
   *
   * @param time times, s since any moment; finite, each later than the one before; one at least
   * @param values for each channel as many values as there are times, NaN where there is none; a
   *     channel without any number counts as not recorded
   * @throws IllegalArgumentException if times are not in order or a channel has another length or
   *     an infinite value
   */
  public Recording(double[] time, Map<Channel, double[]> values) {
    this.time = time.clone();
    if (time.length == 0) {
      throw new IllegalArgumentException("a recording needs one time at least");
    }
    for (int i = 0; i < time.length; i++) {
      if (!Double.isFinite(time[i]) || (i > 0 && !(time[i] > time[i - 1]))) {
        throw new IllegalArgumentException(
            "time " + i + " of a recording is " + time[i] + " s, not after the one before it");
      }
    }
    values.forEach(this::put);
  }

  private void put(Channel channel, double[] given) {
    if (given.length != time.length) {
      throw new IllegalArgumentException(
          channel + " has " + given.length + " values for " + time.length + " times");
    }
    if (Arrays.stream(given).anyMatch(Double::isInfinite)) {
      throw new IllegalArgumentException(channel + " holds an infinite value");
    }
    if (!Arrays.stream(given).allMatch(Double::isNaN)) {
      values.put(channel, given.clone());
    }
  }

  /**
   * How many times there are.
   *
   * @return the count, 1 at least
   */
  public int size() {
    return time.length;
  }

  /**
   * One of the times.
   *
   * @param index 0 to {@link #size} less 1
   * @return the time, s
   */
  public double time(int index) {
    return time[index];
  }

  /**
   * The channels that hold a number anywhere.
   *
   * @return the channels
   */
  public Set<Channel> channels() {
    EnumSet<Channel> recorded = EnumSet.noneOf(Channel.class);
    recorded.addAll(values.keySet());
    return recorded;
  }

  /**
   * What a channel says at one of the times.
   *
   * @param channel the channel
   * @param index 0 to {@link #size} less 1
   * @return the value in the channel's unit; NaN where there is none
   */
  public double value(Channel channel, int index) {
    double[] recorded = values.get(channel);
    return recorded == null ? Double.NaN : recorded[index];
  }

  /**
   * In which steps a channel was written down, where that can be seen: 98 of 100 values lie whole
   * numbers of steps from each other, and each is met twice at the average.
   *
   * @param channel the channel
   * @return the step, in the channel's unit, positive; NaN where the values show none
   */
  public double resolution(Channel channel) {
    return Resolution.of(values.getOrDefault(channel, new double[0]));
  }

  /**
   * In which steps heights are known: the finer of those of height and pressure altitude.
   *
   * @return the step, m, positive; NaN where a height that is recorded shows none
   */
  public double heightResolution() {
    double finest = Double.POSITIVE_INFINITY;
    for (Channel height : List.of(Channel.HEIGHT, Channel.PRESSURE_ALTITUDE)) {
      if (values.containsKey(height)) {
        finest = Math.min(finest, resolution(height)); // of which a NaN stays
      }
    }
    return finest < Double.POSITIVE_INFINITY ? finest : Double.NaN;
  }

  /**
   * The first of the times that is not before a moment.
   *
   * @param moment the moment, s
   * @return its index; {@link #size} if all are before
   */
  public int indexAt(double moment) {
    int found = Arrays.binarySearch(time, moment);
    return found >= 0 ? found : -found - 1;
  }

  /**
   * The part of this recording between two of its times.
   *
   * @param from index of the first time kept
   * @param to index after the last time kept; greater than {@code from}
   * @return the part, with the same clock
   */
  public Recording part(int from, int to) {
    Map<Channel, double[]> kept = new EnumMap<>(Channel.class);
    values.forEach((channel, all) -> kept.put(channel, Arrays.copyOfRange(all, from, to)));
    return new Recording(Arrays.copyOfRange(time, from, to), kept);
  }
}
