package io.github.ringstate.sheets.chart;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * From where to where one axis of a plot reaches, and which round numbers stand on it.
 *
 * @param low its lower end
 * @param high its upper end, above the lower
 * @param ticks the round numbers, ascending
 */
record Axis(double low, double high, List<Double> ticks) {

  private static final double[] STEPS = {1, 2, 5, 10};

  /** Room beyond the data at either end, over their span, so that no mark is cut. */
  private static final double ROOM = 0.05;

  Axis {
    ticks = List.copyOf(ticks);
  }

  /**
   * An axis that covers some data with room at its ends.
   *
   * @param low the least of the data
   * @param high the greatest
   * @param most how many ticks there may be, at least 2
   * @return the axis; of length 1 if the data are all one
   */
  static Axis covering(double low, double high, int most) {
    double span = high > low ? high - low : 1;
    return exactly(low - ROOM * span, low + (1 + ROOM) * span, most);
  }

  /**
   * An axis with given ends.
   *
   * @param low its lower end
   * @param high its upper end
   * @param most how many ticks there may be, at least 2
   * @return the axis
   */
  static Axis exactly(double low, double high, int most) {
    double least = (high - low) / most;
    double power = FastMath.pow(10, (int) Math.floor(FastMath.log10(least)));
    double step = STEPS[STEPS.length - 1] * power;
    for (int i = STEPS.length - 1; i >= 0; i--) {
      if (STEPS[i] * power >= least) {
        step = STEPS[i] * power;
      }
    }
    List<Double> ticks = new ArrayList<>();
    for (long i = (long) Math.ceil(low / step); i * step <= high; i++) {
      ticks.add(i * step);
    }
    return new Axis(low, high, ticks);
  }

  /**
   * Where a value lies.
   *
   * @param value the value
   * @return 0 at the lower end, 1 at the upper
   */
  double share(double value) {
    return (value - low) / (high - low);
  }
}
