package io.github.ringstate.recording;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the moment at which attitude or a control leaves where it was at the onset. A channel
 * has left when it is beyond a threshold, and beyond what it wavers by, for some time; where it
 * began to leave is found on a straight line through readings beyond a quarter of the threshold.
 *
 * <p>What moves already at the onset, as the nose does in a flare, moves for the entry: there the
 * pilot's movement is the way back from the furthest point that is reached. Where it goes far on
 * the same way instead, the recovery may have begun anywhere on it, and no first movement is told.
 */
final class ControlWatch {

  /** What counts as the pilot's doing: rad, rad, share of the lever's travel. */
  private static final double PITCH = FastMath.toRadians(3);

  private static final double BANK = FastMath.toRadians(4);
  private static final double COLLECTIVE = 0.115;

  /** Before the onset a channel is watched for so long, s. */
  private static final double BEFORE = 1.5;

  /** So long must a departure last, s. */
  private static final double LASTS = 0.3;

  /** Times the standard deviation by which a channel wavers. */
  private static final double WAVERING = 4;

  /** What goes on for so many thresholds the way that it moved at the onset may be the recovery. */
  private static final double FAR = 3;

  /** What follows this long after the first movement still belongs to the same action, s. */
  private static final double ACTION = 3;

  private final Recording recording;
  private final int from;
  private final int onset;
  private final int to;

  private ControlWatch(Recording recording, double onsetTime, double end) {
    this.recording = recording;
    from = recording.indexAt(onsetTime - BEFORE);
    onset = Math.min(recording.size() - 1, recording.indexAt(onsetTime));
    to = Math.min(recording.size(), recording.indexAt(end) + 1);
  }

  /** The first movement of any channel; empty if none is recorded or none moved. */
  static Optional<Movement> firstMovement(Recording recording, double onsetTime, double end) {
    ControlWatch watch = new ControlWatch(recording, onsetTime, end);
    Channel first = null;
    Estimate time = null;
    for (Channel channel : new Channel[] {Channel.PITCH, Channel.BANK, Channel.COLLECTIVE}) {
      Estimate left = watch.leaves(channel);
      if (left != null && (time == null || left.value() < time.value())) {
        first = channel;
        time = left;
      }
    }
    if (first == null
        || time == null
        || watch.goesOn(Channel.PITCH, time.value())
        || watch.goesOn(Channel.BANK, time.value())) {
      return Optional.empty();
    }
    int until = Math.min(watch.to, recording.indexAt(time.value() + ACTION) + 1);
    return Optional.of(
        new Movement(
            first,
            time,
            watch.change(Channel.PITCH, until),
            watch.change(Channel.BANK, until),
            watch.change(Channel.COLLECTIVE, until)));
  }

  private static double threshold(Channel channel) {
    return switch (channel) {
      case PITCH -> PITCH;
      case BANK -> BANK;
      default -> COLLECTIVE;
    };
  }

  /** The middle of what a channel says before the onset; NaN if it says nothing. */
  private double level(Channel channel) {
    double[] before = new double[onset - from + 1];
    int count = 0;
    for (int k = from; k <= onset; k++) {
      double value = recording.value(channel, k);
      if (!Double.isNaN(value)) {
        before[count++] = value;
      }
    }
    if (count == 0) {
      return Double.NaN;
    }
    Arrays.sort(before, 0, count);
    return before[count / 2];
  }

  /** By how much a channel wavers from one reading to the next before the onset. */
  private double wavering(Channel channel) {
    double sum = 0;
    int count = 0;
    for (int k = from + 1; k <= onset; k++) {
      double step = recording.value(channel, k) - recording.value(channel, k - 1);
      if (!Double.isNaN(step)) {
        sum += step * step / 2;
        count++;
      }
    }
    return count == 0 ? 0 : FastMath.sqrt(sum / count);
  }

  /** By how much a channel changes before the onset, on the straight line of least squares. */
  private double trend(Channel channel) {
    double n = 0;
    double t = 0;
    double v = 0;
    double tt = 0;
    double tv = 0;
    for (int k = from; k <= onset; k++) {
      double value = recording.value(channel, k);
      if (!Double.isNaN(value)) {
        double time = recording.time(k) - recording.time(onset);
        n++;
        t += time;
        v += value;
        tt += time * time;
        tv += time * value;
      }
    }
    return n < 3 ? 0 : (n * tv - t * v) / (n * tt - t * t) * BEFORE;
  }

  /** From where a channel departs, at each time: one level, or the furthest point so far. */
  private double[] references(Channel channel, double level) {
    double trend = trend(channel);
    double[] references = new double[to];
    Arrays.fill(references, level);
    if (moves(channel, trend)) {
      double furthest = recording.value(channel, onset);
      for (int k = from; k < to; k++) {
        double value = recording.value(channel, k);
        boolean further = trend > 0 ? value > furthest : value < furthest;
        furthest = k > onset && (further || Double.isNaN(furthest)) ? value : furthest;
        references[k] = k <= onset ? value : furthest;
      }
    }
    return references;
  }

  /** Whether a channel that changes so moves for the entry. */
  private static boolean moves(Channel channel, double trend) {
    return FastMath.abs(trend) > threshold(channel) / 2;
  }

  /**
   * Whether a channel that moves at the onset went far on the same way until a time; no recovery
   * raises the nose.
   */
  private boolean goesOn(Channel channel, double until) {
    double trend = trend(channel);
    if (!moves(channel, trend) || (channel == Channel.PITCH && trend > 0)) {
      return false;
    }
    double far = FAR * threshold(channel);
    double begun = recording.value(channel, onset);
    boolean gone = false;
    for (int k = onset; k < to && recording.time(k) < until; k++) {
      gone |= FastMath.signum(trend) * (recording.value(channel, k) - begun) > far;
    }
    return gone;
  }

  private @Nullable Estimate leaves(Channel channel) {
    double level = level(channel);
    if (Double.isNaN(level)) {
      return null;
    }
    double[] references = references(channel, level);
    double threshold = Math.max(threshold(channel), WAVERING * wavering(channel));
    int beyond = -1;
    for (int k = from; k < to; k++) {
      double departure = FastMath.abs(recording.value(channel, k) - references[k]);
      if (departure > threshold) {
        beyond = beyond < 0 ? k : beyond;
        if (recording.time(k) - recording.time(beyond) >= LASTS || k + 1 == to) {
          return start(channel, references[beyond], threshold, beyond);
        }
      } else if (departure <= threshold) {
        beyond = -1;
      }
    }
    return null;
  }

  /**
   * Where a departure began: where the straight line through the reading that is first beyond a
   * quarter of the threshold and one up to 0.3 s later leaves the level, but not before the last
   * reading that is not so far off, unless that one is on its way already.
   */
  private Estimate start(Channel channel, double level, double threshold, int beyond) {
    int quarter = beyond;
    int low = knownBefore(channel, beyond);
    while (low >= from && off(channel, low, level) > threshold / 4) {
      quarter = low;
      low = knownBefore(channel, low);
    }
    if (low < 0) {
      return new Estimate(recording.time(quarter), 0);
    }
    double interval = recording.time(quarter) - recording.time(low);
    double small = off(channel, low, level);
    int later = later(channel, quarter, beyond);
    double rate = Math.max(rate(channel, level, low, later), rate(channel, level, quarter, later));
    double between = interval / FastMath.sqrt(12.0);
    if (!(rate > 0)) {
      return new Estimate(recording.time(low), between);
    }
    double unsure = FastMath.hypot(between, wavering(channel) / rate);
    double line = recording.time(quarter) - off(channel, quarter, level) / rate;
    double earliest = recording.time(low) - Math.min(small / rate, LASTS);
    return new Estimate(Math.max(earliest, line), unsure);
  }

  private double off(Channel channel, int k, double level) {
    return FastMath.abs(recording.value(channel, k) - level);
  }

  /** How fast a channel departs from a level between two readings; 0 for one alone. */
  private double rate(Channel channel, double level, int first, int last) {
    return first == last
        ? 0
        : (off(channel, last, level) - off(channel, first, level))
            / (recording.time(last) - recording.time(first));
  }

  /** The last reading of a channel before another; -1 if there is none. */
  private int knownBefore(Channel channel, int k) {
    int before = k - 1;
    while (before >= 0 && Double.isNaN(recording.value(channel, before))) {
      before--;
    }
    return before;
  }

  /**
   * The last reading of a channel within 0.3 s, up to a limit if that is later, and at the least
   * the next; the same one if there is none.
   */
  private int later(Channel channel, int first, int limit) {
    int later = first;
    for (int k = first + 1; k < to; k++) {
      boolean near = k <= limit && recording.time(k) - recording.time(first) <= LASTS;
      if (!Double.isNaN(recording.value(channel, k)) && (near || later == first)) {
        later = k;
      }
    }
    return later;
  }

  /** The greatest change of a channel from its level, with its sign; NaN if not recorded. */
  private double change(Channel channel, int until) {
    double level = level(channel);
    double most = Double.isNaN(level) ? Double.NaN : 0;
    double[] references = references(channel, level);
    for (int k = onset; k < until; k++) {
      double departure = recording.value(channel, k) - references[k];
      most = FastMath.abs(departure) > FastMath.abs(most) ? departure : most;
    }
    return most;
  }
}
