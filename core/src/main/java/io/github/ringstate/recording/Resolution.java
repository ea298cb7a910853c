package io.github.ringstate.recording;

import java.util.Arrays;
import org.hipparchus.util.FastMath;

/** The steps in which values were written down, found from the values themselves. */
final class Resolution {

  /** With fewer values that differ nothing is said. */
  private static final int FEWEST = 3;

  /** Each value is met so often at the average, or steps are those of the motion. */
  private static final int MET = 2;

  /** So many of all lie whole numbers of steps apart; others are stray. */
  private static final double SHARE = 0.98;

  /** A value may be off its place by so many steps for each step between, and in all. */
  private static final double OFF = 0.02;

  private static final double MOST_OFF = 0.25;

  private Resolution() {}

  /** The step; NaN where the values show none. */
  static double of(double... values) {
    double[] all = Arrays.stream(values).filter(value -> !Double.isNaN(value)).sorted().toArray();
    double[] different = Arrays.stream(all).distinct().toArray();
    if (different.length < FEWEST || all.length < MET * different.length) {
      return Double.NaN;
    }
    double[] gaps = new double[different.length - 1];
    for (int i = 0; i < gaps.length; i++) {
      gaps[i] = different[i + 1] - different[i];
    }
    Arrays.sort(gaps);
    double step = gaps[(gaps.length - 1) / 2];
    double base = commonest(all);
    long apart = Arrays.stream(all).filter(value -> liesOn(step, value - base)).count();
    return apart >= SHARE * all.length ? step : Double.NaN;
  }

  private static boolean liesOn(double step, double difference) {
    double steps = difference / step;
    double whole = FastMath.rint(steps);
    return Math.abs(steps - whole) <= Math.min(MOST_OFF, OFF * (1 + Math.abs(whole)));
  }

  /** The value that is met most often. */
  private static double commonest(double... sorted) {
    double found = sorted[0];
    int most = 0;
    int count = 0;
    for (int i = 0; i < sorted.length; i++) {
      count = i > 0 && sorted[i] == sorted[i - 1] ? count + 1 : 1;
      if (count > most) {
        most = count;
        found = sorted[i];
      }
    }
    return found;
  }
}
