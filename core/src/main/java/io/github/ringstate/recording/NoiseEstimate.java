package io.github.ringstate.recording;

import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.hipparchus.util.FastMath;

/**
 * The noise that makes a recording's own readings most likely: jerk and the noise of each channel
 * from reading to reading. The slow error of a height cannot be told from a flight of some minutes
 * and stays as given.
 */
public final class NoiseEstimate {

  /** Readings are enough for a few numbers, and more cost time. */
  private static final int READINGS = 800;

  /** Within these bounds, as logarithms to the base of e. */
  private static final double LOW = FastMath.log(1e-3);

  private static final double HIGH = FastMath.log(1e3);
  private static final int EVALUATIONS = 400;
  private static final double TOLERANCE = 1e-4;

  private NoiseEstimate() {}

  /**
   * Estimates the noise. Where the search has not come to its end after 400 evaluations, as for
   * readings that say little of their noise, the most likely of those it tried is the answer.
   *
   * @param recording with a height or a pressure altitude
   * @param drift standard deviation of the slow error of a height, m
   * @param driftTime its correlation time, s
   * @return the noise
   * @throws IllegalArgumentException if no height is recorded
   */
  public static Noise of(Recording recording, double drift, double driftTime) {
    Recording busiest = busiest(recording);
    double[] least = least(recording);
    double[] best = new double[4];
    double[] most = {Double.NEGATIVE_INFINITY};
    try {
      new SimplexOptimizer(TOLERANCE, TOLERANCE)
          .optimize(
              new MaxEval(EVALUATIONS),
              new InitialGuess(new double[] {0, 0, 0, 0}),
              new NelderMeadSimplex(4, 1.5),
              GoalType.MAXIMIZE,
              new ObjectiveFunction(
                  logs -> {
                    double likelihood = likelihood(busiest, logs, least, drift, driftTime);
                    if (likelihood > most[0]) {
                      most[0] = likelihood;
                      System.arraycopy(logs, 0, best, 0, best.length);
                    }
                    return likelihood;
                  }));
    } catch (MathIllegalStateException unfinished) {
      // the best of those that were tried stands
    }
    return noise(best, least, drift, driftTime);
  }

  private static double likelihood(
      Recording recording, double[] logs, double[] least, double drift, double driftTime) {
    // a slope beyond the bounds leads back inside; noise of a channel that is not recorded would
    // wander, so a faint pull holds it where it began
    double outside = 0;
    double pull = 0;
    for (double log : logs) {
      outside += Math.max(0, LOW - log) + Math.max(0, log - HIGH);
      pull += log * log;
    }
    return VerticalMotion.logLikelihood(recording, noise(logs, least, drift, driftTime))
        - 1e6 * outside
        - 1e-3 * pull;
  }

  private static Noise noise(double[] logs, double[] least, double drift, double driftTime) {
    double[] values = new double[logs.length];
    for (int i = 0; i < logs.length; i++) {
      values[i] = Math.max(FastMath.exp(Math.min(Math.max(logs[i], LOW), HIGH)), least[i]);
    }
    return new Noise(values[0], values[1], values[2], values[3], drift, driftTime);
  }

  /**
   * What the last place of a channel adds at the least: values rounded to a step are off by
   * anything up to half of it either way, which is a standard deviation of step over the root of
   * 12.
   */
  private static double[] least(Recording recording) {
    return new double[] {
      0,
      rounding(recording, Channel.HEIGHT),
      rounding(recording, Channel.PRESSURE_ALTITUDE),
      rounding(recording, Channel.VERTICAL_SPEED)
    };
  }

  private static double rounding(Recording recording, Channel channel) {
    double resolution = recording.resolution(channel);
    return Double.isNaN(resolution) ? 0 : resolution / FastMath.sqrt(12);
  }

  /** The part with the greatest differences of height within it, not longer than need be. */
  private static Recording busiest(Recording recording) {
    if (recording.size() <= READINGS) {
      return recording;
    }
    int best = 0;
    double most = -1;
    int last = recording.size() - READINGS;
    for (int next = 0; next < last + READINGS / 2; next += READINGS / 2) {
      int from = Math.min(next, last); // the last window reaches to the last reading
      double range = range(recording, from, from + READINGS);
      if (range > most) {
        most = range;
        best = from;
      }
    }
    return recording.part(best, best + READINGS);
  }

  private static double range(Recording recording, int from, int to) {
    Channel channel =
        recording.channels().contains(Channel.HEIGHT) ? Channel.HEIGHT : Channel.PRESSURE_ALTITUDE;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int k = from; k < to; k++) {
      double value = recording.value(channel, k);
      lowest = Math.min(lowest, Double.isNaN(value) ? lowest : value);
      highest = Math.max(highest, Double.isNaN(value) ? highest : value);
    }
    return highest - lowest;
  }
}
