package io.github.ringstate.validation.numerics;

import io.github.ringstate.air.StandardAtmosphere;

/** The catalogue of problems. */
public final class Problems {

  /** Standard gravity, m/s2. */
  private static final double GRAVITY = StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901;

  private Problems() {}

  /**
   * A body that falls through air from rest, with drag by the square of its speed: s'' = g - k
   * s'^2, hence s' = u tanh(g t / u) and s = (u^2 / g) ln cosh(g t / u) with u = sqrt(g / k).
   * Event: 50 m fallen.
   *
   * @param terminal terminal speed u, m/s
   * @return the problem
   */
  public static Problem fallWithDrag(double terminal) {
    double k = GRAVITY / (terminal * terminal);
    double length = terminal * terminal / GRAVITY;
    double growth = Math.exp(50 / length);
    double time = terminal / GRAVITY * Math.log(growth + Math.sqrt(growth * growth - 1));
    return new Problem(
        "fall with drag",
        new double[] {0, 0},
        10,
        y -> new double[] {y[1], GRAVITY - k * y[1] * Math.abs(y[1])},
        t -> {
          double a = GRAVITY * t / terminal;
          return new double[] {length * Math.log(Math.cosh(a)), terminal * Math.tanh(a)};
        },
        y -> y[0] - 50,
        Double.NaN,
        new double[] {time});
  }

  /**
   * A harmonic oscillator, s'' = -s from s = 1. Event: s = 0, at odd multiples of pi / 2.
   *
   * @return the problem
   */
  public static Problem oscillator() {
    return new Problem(
        "harmonic oscillator",
        new double[] {1, 0},
        10,
        y -> new double[] {y[1], -y[0]},
        t -> new double[] {Math.cos(t), -Math.sin(t)},
        y -> y[0],
        Double.NaN,
        new double[] {Math.PI / 2, 3 * Math.PI / 2, 5 * Math.PI / 2});
  }

  /**
   * A ball dropped from 5 m that keeps four fifths of its speed at each contact. Contacts are at t0
   * = sqrt(2 h / g) and then after flights of 2 e^n t0.
   *
   * @return the problem
   */
  public static Problem bouncingBall() {
    double height = 5;
    double e = 0.8;
    double first = Math.sqrt(2 * height / GRAVITY);
    double[] times = {
      first, first * (1 + 2 * e), first * (1 + 2 * e + 2 * e * e),
    };
    return new Problem(
        "bouncing ball",
        new double[] {height, 0},
        4.5,
        y -> new double[] {y[1], -GRAVITY},
        t -> {
          int bounces = 0;
          while (bounces < times.length && t > times[bounces]) {
            bounces++;
          }
          double last = bounces == 0 ? 0 : times[bounces - 1];
          double up = bounces == 0 ? 0 : GRAVITY * first * Math.pow(e, bounces);
          double from = bounces == 0 ? height : 0;
          double s = t - last;
          return new double[] {from + up * s - GRAVITY * s * s / 2, up - GRAVITY * s};
        },
        y -> y[0],
        e,
        times);
  }
}
