package io.github.ringstate.integrate;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * A problem of a textbook with its exact solution, and a quantity with the exact instants at which
 * it passes through zero: rising from the first or the second of them on, by turns.
 *
 * @param decay the rate at which the last quantity decays by itself, 1/s; 0 if the problem is not
 *     stiff
 */
@SuppressWarnings("ArrayRecordComponent") // a state is an array
record Problem(
    String name,
    double[] start,
    double end,
    Rates rates,
    DoubleFunction<double[]> solution,
    ToDoubleFunction<Problem.Point> quantity,
    boolean risesFirst,
    double decay,
    double... times) {

  private static final double GRAVITY = 9.80665;

  /** The right-hand side. */
  @FunctionalInterface
  interface Rates {
    void at(double t, double[] y, double[] rates);
  }

  /** What events look at. */
  @SuppressWarnings("ArrayRecordComponent") // a state is an array
  record Point(double time, double[] state) {}

  static List<Problem> all() {
    return List.of(fallWithDrag(), oscillator(), logisticGrowth(), followedCosine());
  }

  /** Equations that count how often they are worked out. */
  static final class Counted implements Equations<Point> {

    private final Problem problem;
    private int count;

    Counted(Problem problem) {
      this.problem = problem;
    }

    int count() {
      return count;
    }

    @Override
    public int dimension() {
      return problem.start().length;
    }

    @Override
    public Point rates(double time, double[] state, double[] rates) {
      count++;
      problem.rates().at(time, state, rates);
      return at(time, state);
    }

    @Override
    public Point at(double time, double[] state) {
      return new Point(time, state);
    }
  }

  Counted equations() {
    return new Counted(this);
  }

  /** Goes on to a time or to an event that stops the leg, and says which. */
  @SafeVarargs
  @SuppressWarnings("varargs") // a list of them, which is only read
  final @Nullable String fly(
      Propagator<String, Point> by, double until, Event<String, Point>... events) {
    return by.propagate(equations(), until, List.of(events));
  }

  /**
   * s'' = g - k s'^2 from rest: s' = u tanh(g t / u), s = (u^2 / g) ln cosh(g t / u) with u =
   * sqrt(g / k). Any textbook of mechanics. Quantity: 50 m fallen.
   */
  static Problem fallWithDrag() {
    double terminal = 40;
    double length = terminal * terminal / GRAVITY;
    double growth = FastMath.exp(50 / length);
    return new Problem(
        "fall with drag",
        new double[] {0, 0},
        10,
        (t, y, rates) -> {
          rates[0] = y[1];
          rates[1] = GRAVITY - y[1] * Math.abs(y[1]) / length;
        },
        t -> {
          double a = GRAVITY * t / terminal;
          return new double[] {
            length * FastMath.log(FastMath.cosh(a)), terminal * FastMath.tanh(a)
          };
        },
        at -> at.state()[0] - 50,
        true,
        0,
        terminal / GRAVITY * FastMath.acosh(growth));
  }

  /** s'' = -s from s = 1. Quantity: s, zero at odd multiples of pi / 2. */
  static Problem oscillator() {
    return new Problem(
        "harmonic oscillator",
        new double[] {1, 0},
        10,
        (t, y, rates) -> {
          rates[0] = y[1];
          rates[1] = -y[0];
        },
        t -> new double[] {FastMath.cos(t), -FastMath.sin(t)},
        at -> at.state()[0],
        false,
        0,
        Math.PI / 2,
        3 * Math.PI / 2,
        5 * Math.PI / 2);
  }

  /**
   * y' = y (1 - y) from y = 1/10: y = 1 / (1 + 9 exp(-t)) (Verhulst; any textbook of differential
   * equations). Quantity: y - 1/2, zero at ln 9.
   */
  static Problem logisticGrowth() {
    return new Problem(
        "logistic growth",
        new double[] {0.1},
        6,
        (t, y, rates) -> rates[0] = y[0] * (1 - y[0]),
        t -> new double[] {1 / (1 + 9 * FastMath.exp(-t))},
        at -> at.state()[0] - 0.5,
        true,
        0,
        FastMath.log(9));
  }

  /**
   * v' = -50 (v - cos t) - sin t from v = 1: v = cos t, whatever the rate. From the paper On the
   * stability and accuracy of one-step methods for solving stiff systems, Mathematics of
   * Computation 28, 1974 (from memory). Quantity: v.
   */
  static Problem followedCosine() {
    double rate = 50;
    return new Problem(
        "cosine followed at 50 a second",
        new double[] {1},
        6,
        (t, y, rates) -> rates[0] = -rate * (y[0] - FastMath.cos(t)) - FastMath.sin(t),
        t -> new double[] {FastMath.cos(t)},
        at -> at.state()[0],
        false,
        rate,
        Math.PI / 2,
        3 * Math.PI / 2);
  }

  @Override
  public String toString() {
    return name;
  }
}
