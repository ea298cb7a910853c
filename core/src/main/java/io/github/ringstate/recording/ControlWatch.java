package io.github.ringstate.recording;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the moment at which attitude or a control leaves where it was at the onset. A channel
 * has left when it is beyond a threshold, and beyond what it wavers by, for some time; where it
 * began to leave is found on the straight line through a quarter and the whole of the threshold.
 *
 * <p>What moves already at the onset, as the nose does in a flare, moves for the entry: there the
 * pilot's movement is the way back from the furthest point that is reached.
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
    if (first == null || time == null) {
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
    if (FastMath.abs(trend) > threshold(channel) / 2) {
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

  private Estimate start(Channel channel, double level, double threshold, int beyond) {
    int quarter = beyond;
    while (quarter > from
        && FastMath.abs(recording.value(channel, quarter - 1) - level) > threshold / 4) {
      quarter--;
    }
    double whole = recording.time(beyond);
    double low = quarter > 0 ? recording.time(quarter - 1) : recording.time(quarter);
    double high = FastMath.abs(recording.value(channel, beyond) - level);
    double small = quarter > 0 ? FastMath.abs(recording.value(channel, quarter - 1) - level) : 0;
    double rate = (high - small) / Math.max(1e-6, whole - low);
    double back = rate > 0 ? Math.min(small / rate, LASTS) : 0;
    double interval = beyond > 0 ? recording.time(beyond) - recording.time(beyond - 1) : 0;
    double unsure = rate > 0 ? wavering(channel) / rate : 0;
    return new Estimate(low - back, FastMath.hypot(interval / FastMath.sqrt(12.0), unsure));
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
