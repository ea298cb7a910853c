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

  /** How often a step asks for rates. */
  static final int EVALUATIONS = 3;

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
    double[] from = y;
    double[] to = next;
    double[] first = k1;
    double[] last = k4;
    if (stiff < 0) {
      second(h, from, to, first);
      equations.rates(time + 0.5 * h, to, k2);
      third(h, from, to);
      equations.rates(time + 0.75 * h, to, k3);
      end(h, from, to, first);
    } else {
      weights.of(excess * h);
      double held = from[stiff];
      double n1 = first[stiff];
      second(h, from, to, first);
      to[stiff] = held + h * weights.second(n1);
      equations.rates(time + 0.5 * h, to, k2);
      double n2 = k2[stiff] + excess * (to[stiff] - held);
      third(h, from, to);
      to[stiff] = held + h * weights.third(n1, n2);
      equations.rates(time + 0.75 * h, to, k3);
      double n3 = k3[stiff] + excess * (to[stiff] - held);
      end(h, from, to, first);
      to[stiff] = held + h * weights.end(n1, n2, n3);
    }
    end = equations.rates(time + h, to, last);
    return h * error(first, last);
  }

  private void second(double h, double[] from, double[] to, double[] first) {
    for (int i = 0; i < to.length; i++) {
      to[i] = from[i] + 0.5 * h * first[i];
    }
  }

  private void third(double h, double[] from, double[] to) {
    double[] middle = k2;
    for (int i = 0; i < to.length; i++) {
      to[i] = from[i] + 0.75 * h * middle[i];
    }
  }

  private void end(double h, double[] from, double[] to, double[] first) {
    double[] middle = k2;
    double[] late = k3;
    for (int i = 0; i < to.length; i++) {
      to[i] = from[i] + h * (2.0 / 9 * first[i] + 1.0 / 3 * middle[i] + 4.0 / 9 * late[i]);
    }
  }

  /** The norm of the error estimate, over the step. */
  private double error(double[] first, double[] last) {
    // two sums: a processor works on both at a time
    double even = 0;
    double odd = 0;
    int pairs = first.length & ~1;
    for (int i = 0; i < pairs; i += 2) {
      double one = error(i, first, last);
      double other = error(i + 1, first, last);
      even += one * one;
      odd += other * other;
    }
    if (pairs < first.length) {
      double rest = error(pairs, first, last);
      even += rest * rest;
    }
    return Math.sqrt(even + odd);
  }

  private double error(int i, double[] first, double[] last) {
    return inverseScales[i]
        * (-5.0 / 72 * first[i] + 1.0 / 12 * k2[i] + 1.0 / 9 * k3[i] - 1.0 / 8 * last[i]);
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

  /**
   * The least value of a quantity inside the first part s of a step that it begins falling and ends
   * rising; infinite if it lies behind that part or the quantity goes otherwise.
   */
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
