package io.github.ringstate.recording;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.IntStream;

/** What a recording holds, and recordings that hold something else in a channel. */
public final class Rewritten {

  private Rewritten() {}

  /** The times, s. */
  public static double[] times(Recording recording) {
    return IntStream.range(0, recording.size()).mapToDouble(recording::time).toArray();
  }

  /** What is recorded in a channel; not a number where nothing is. */
  public static double[] values(Recording recording, Channel channel) {
    return IntStream.range(0, recording.size())
        .mapToDouble(k -> recording.value(channel, k))
        .toArray();
  }

  /** The recording with other values in one channel. */
  public static Recording with(Recording recording, Channel changed, double[] values) {
    Map<Channel, double[]> all = new EnumMap<>(Channel.class);
    recording.channels().forEach(channel -> all.put(channel, values(recording, channel)));
    all.put(changed, values);
    return new Recording(times(recording), all);
  }
}
