package io.github.ringstate.integrate;

import org.hipparchus.util.FastMath;

/**
 * Weights of the three stages of a step for a quantity that decays fast: Bogacki and Shampine's, in
 * which the decay is solved exactly.
 *
 * <p>The quantity follows dv/dt = -c (v - v1) + n(t), where v1 is its value at the beginning of the
 * step and c is held. What the stages add up is n, weighted by the functions phi1(a) = (1 - e^-a) /
 * a and phi2(a) = (e^-a - 1 + a) / a^2 of a = c h. They are an exponential Runge-Kutta method of
 * the family with three stages by Hochbruck and Ostermann (Explicit exponential Runge-Kutta methods
 * for semilinear parabolic problems, SIAM Journal on Numerical Analysis 43, 2005, section 5.2; from
 * memory) with c2 = 1/2 and c3 = gamma = 3/4: of order three whatever c is, and Bogacki and
 * Shampine's method where c vanishes.
 */
final class DecayWeights {

  private static final double SMALL = 1e-3;

  private double ofFirst = 0.5;
  private double firstOfSecond;
  private double secondOfSecond = 0.75;
  private double phi1 = 1;
  private double phi2 = 0.5;
  private double worked;

  /** Works the weights out for a decay: rate times step, not negative. */
  void of(double decay) {
    if (decay == worked) {
      return;
    }
    worked = decay;
    double quarter = FastMath.exp(-0.25 * decay);
    double half = quarter * quarter;
    double half1 = phi1(0.5 * decay, half);
    double most1 = phi1(0.75 * decay, half * quarter);
    phi1 = phi1(decay, half * half);
    phi2 = phi2(decay, phi1);
    ofFirst = 0.5 * half1;
    secondOfSecond = 0.375 * phi2(0.5 * decay, half1) + 1.125 * phi2(0.75 * decay, most1);
    firstOfSecond = 0.75 * most1 - secondOfSecond;
  }

  private static double phi1(double a, double exponential) {
    return a < SMALL ? 1 - a * (0.5 - a / 6) : (1 - exponential) / a;
  }

  private static double phi2(double a, double phi1) {
    return a < SMALL ? 0.5 - a * (1.0 / 6 - a / 24) : (1 - phi1) / a;
  }

  /** Where the second stage looks, over the step. */
  double second(double n1) {
    return ofFirst * n1;
  }

  /** Where the third stage looks, over the step. */
  double third(double n1, double n2) {
    return firstOfSecond * n1 + secondOfSecond * n2;
  }

  /** Where the step leads, over the step. */
  double end(double n1, double n2, double n3) {
    return phi1 * n1 + phi2 * (2.0 / 3 * (n2 - n1) + 8.0 / 9 * (n3 - n1));
  }
}
