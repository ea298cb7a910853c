package io.github.ringstate.sheets.chart;

import io.github.ringstate.files.text.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hipparchus.util.FastMath;

/**
 * From where to where one axis of a plot reaches, and which round numbers stand on it.
 *
 * @param low its lower end
 * @param high its upper end, above the lower
 * @param ticks the round numbers, ascending
 * @param logarithmic whether equal lengths stand for equal ratios; both ends are then positive
 */
record Axis(double low, double high, List<Double> ticks, boolean logarithmic) {

  private static final double[] STEPS = {1, 2, 5, 10};

  /** Room beyond the data at either end, over their span, so that no mark is cut. */
  private static final double ROOM = 0.05;

  /** What rounding may put a tick beyond an end by, over the step between ticks. */
  private static final double ROUNDING = 1e-9;

  /** Powers of ten that are written out. */
  private static final int PLAIN_DIGITS = 3;

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
    for (long i = (long) Math.ceil(low / step - ROUNDING);
        i * step <= high + ROUNDING * step;
        i++) {
      ticks.add(i * step);
    }
    return new Axis(low, high, ticks, false);
  }

  /**
   * A logarithmic axis with given ends and its ticks at the powers of ten.
   *
   * @param low its lower end, positive
   * @param high its upper end
   * @return the axis
   */
  static Axis decades(double low, double high) {
    List<Double> ticks = new ArrayList<>();
    for (int i = (int) Math.ceil(FastMath.log10(low)); i <= FastMath.log10(high); i++) {
      ticks.add(FastMath.pow(10, i));
    }
    return new Axis(low, high, ticks, true);
  }

  /**
   * Where a value lies, in the measure in which the axis is even.
   *
   * @param value the value, positive on a logarithmic axis
   * @return the value, or its logarithm to base ten
   */
  double even(double value) {
    return logarithmic ? FastMath.log10(value) : value;
  }

  /** Many values as {@link #even(double)} gives them. */
  double[] even(double[] values) {
    return DoubleStream.of(values).map(this::even).toArray();
  }

  /**
   * What stands at a tick.
   *
   * @param tick the tick
   * @return the number; a power of ten that is long to write out as {@code 1e-6}
   */
  String text(double tick) {
    long power = logarithmic ? Math.round(FastMath.log10(tick)) : 0;
    return Math.abs(power) > PLAIN_DIGITS ? "1e" + power : Decimals.brief(tick);
  }

  /**
   * Where a value lies.
   *
   * @param value the value
   * @return 0 at the lower end, 1 at the upper
   */
  double share(double value) {
    return (even(value) - even(low)) / (even(high) - even(low));
  }
}
