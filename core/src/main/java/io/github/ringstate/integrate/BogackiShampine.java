package io.github.ringstate.integrate;

import org.jspecify.annotations.Nullable;

/**
 * Steps of the pair of order 3 with an error estimate of order 2 by Bogacki and Shampine (Applied
 * Mathematics Letters 2, 1989), on arrays of its own.
 *
 * <p>The last stage of a step is the first of the next one, so the rates at the end of each step
 * are known without another evaluation. Between the ends the state lies on the cubic through values
 * and rates there (Hermite). One quantity may decay faster than the plain method bears; the excess
 * of its decay is then solved exactly ({@link DecayWeights}).
 */
final class BogackiShampine<V> {

  private final int size;
  private final double[] inverseScales;
  private final int stiff;
  private final DecayWeights weights = new DecayWeights();
  private double[] y;
  private double[] next;
  private double[] k1;
  private final double[] k2;
  private final double[] k3;
  private double[] k4;
  private final double[] probe;
  private @Nullable V end;

  BogackiShampine(double[] inverseScales, int stiff) {
    this.inverseScales = inverseScales;
    this.stiff = stiff;
    size = inverseScales.length;
    y = new double[size];
    next = new double[size];
    k1 = new double[size];
    k2 = new double[size];
    k3 = new double[size];
    k4 = new double[size];
    probe = new double[size];
  }

  /** The state at the beginning of the step. */
  double[] state() {
    return y;
  }

  /** Works out the rates at the beginning of the first step. */
  V begin(Equations<V> equations, double time) {
    return equations.rates(time, y, k1);
  }

  /**
   * Tries a step.
   *
   * @param excess the part of the stiff quantity's decay to solve exactly, not negative
   * @return its error in the scales
   */
  double attempt(Equations<V> equations, double time, double h, double excess) {
    boolean split = stiff >= 0;
    double held = 0;
    double n1 = 0;
    double n2 = 0;
    if (split) {
      weights.of(excess * h);
      held = y[stiff];
      n1 = k1[stiff];
    }
    for (int i = 0; i < size; i++) {
      next[i] = y[i] + 0.5 * h * k1[i];
    }
    if (split) {
      next[stiff] = held + h * weights.second(n1);
    }
    equations.rates(time + 0.5 * h, next, k2);
    if (split) {
      n2 = k2[stiff] + excess * (next[stiff] - held);
    }
    for (int i = 0; i < size; i++) {
      next[i] = y[i] + 0.75 * h * k2[i];
    }
    if (split) {
      next[stiff] = held + h * weights.third(n1, n2);
    }
    equations.rates(time + 0.75 * h, next, k3);
    double atThird = split ? next[stiff] : 0;
    for (int i = 0; i < size; i++) {
      next[i] = y[i] + h * (2.0 / 9 * k1[i] + 1.0 / 3 * k2[i] + 4.0 / 9 * k3[i]);
    }
    if (split) {
      next[stiff] = held + h * weights.end(n1, n2, k3[stiff] + excess * (atThird - held));
    }
    end = equations.rates(time + h, next, k4);
    return h * error();
  }

  /** The norm of the error estimate, over the step. */
  private double error() {
    // two sums: a processor works on both at a time
    double even = 0;
    double odd = 0;
    int pairs = size & ~1;
    for (int i = 0; i < pairs; i += 2) {
      double one = error(i);
      double other = error(i + 1);
      even += one * one;
      odd += other * other;
    }
    if (pairs < size) {
      double last = error(pairs);
      even += last * last;
    }
    return Math.sqrt(even + odd);
  }

  private double error(int i) {
    return inverseScales[i]
        * (-5.0 / 72 * k1[i] + 1.0 / 12 * k2[i] + 1.0 / 9 * k3[i] - 1.0 / 8 * k4[i]);
  }

  /** The view of the end of the step that was tried last. */
  V end() {
    if (end == null) {
      throw new IllegalStateException("no step was tried");
    }
    return end;
  }

  /** Goes to the end of a step that was worked out; its rates there begin the next one. */
  void moveOn() {
    double[] left = y;
    y = next;
    next = left;
    double[] slope = k1;
    k1 = k4;
    k4 = slope;
  }

  /** The state at a part s of the step, on the cubic; the same array each time. */
  double[] within(double h, double s) {
    for (int i = 0; i < size; i++) {
      probe[i] = cubic(i, h, s);
    }
    return probe;
  }

  /** The least value of a quantity inside the first part s of the step; infinite if at its ends. */
  double valley(int i, double h, double s) {
    if (!(k1[i] < 0 && k4[i] > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    // where the slope of Hermite's cubic vanishes: a r^2 + b r + c = 0 with c < 0 < a + b + c
    double rise = 6 * (next[i] - y[i]);
    double c = h * k1[i];
    double b = rise - 4 * c - 2 * h * k4[i];
    double a = 3 * (c + h * k4[i]) - rise;
    double r = -2 * c / (b + Math.sqrt(b * b - 4 * a * c));
    return r > 0 && r < s ? cubic(i, h, r) : Double.POSITIVE_INFINITY;
  }

  private double cubic(int i, double h, double s) {
    double r = 1 - s;
    return (1 + 2 * s) * r * r * y[i]
        + s * r * r * h * k1[i]
        + s * s * (3 - 2 * s) * next[i]
        - s * s * r * h * k4[i];
  }
}
