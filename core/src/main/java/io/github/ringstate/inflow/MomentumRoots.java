package io.github.ringstate.inflow;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.util.FastMath;

/**
 * The roots of the momentum equation v sqrt(x^2 + (z + v)^2) = 1, found branch by branch.
 *
 * <p>Squared, the equation is the quartic P(v) = v^2 (x^2 + (z + v)^2) - 1 = 0. Halley's iteration
 * on P needs one division and no square root a step, and from the guess v = 1 / sqrt(x^2 + w0^2),
 * with w0 the axial total inflow, it is at rounding level after at most four steps on the climb
 * branch above z = -1.2 and after three on the windmill branch below z = -2.1. Ferrari's closed
 * form was not used: it costs more, and its cubic resolvent cancels where x or z is large.
 *
 * <p>As a function of w the equation reads z = w - 1 / sqrt(x^2 + w^2). With r = x^2 + w^2 it turns
 * where r^3 - r + x^2 = 0 and w = -r^1.5, which has two solutions below the edgewise speed {@link
 * #SINGLE_ROOT_EDGEWISE} and none above.
 */
final class MomentumRoots {

  /** sqrt(2 / (3 sqrt 3)): the least edgewise speed above which the equation has one root. */
  static final double SINGLE_ROOT_EDGEWISE = Math.sqrt(2 / (3 * Math.sqrt(3)));

  /** Above this axial speed {@link #climb} may be used at any edgewise speed. */
  static final double CLIMB_LOWEST = -1.2;

  /** Below this axial speed {@link #windmill} may be used at any edgewise speed. */
  static final double WINDMILL_HIGHEST = -2.1;

  /**
   * Halley's iteration is of third order, so a step this small leaves an error far below rounding.
   */
  private static final double LAST_STEP = 1e-6;

  private static final int MOST_STEPS = 200;

  private MomentumRoots() {}

  /** The axial root on the climb branch, z not above 0. */
  static double axialClimb(double z) {
    double half = 0.5 * z;
    return Math.sqrt(half * half + 1) - half;
  }

  /** The axial root on the windmill branch, z at most -2. */
  static double axialWindmill(double z) {
    double half = 0.5 * z;
    return 1 / (Math.sqrt((half - 1) * (half + 1)) - half);
  }

  /** The largest root, for z not below {@link #CLIMB_LOWEST}. */
  static double climb(double x, double z) {
    double w0 = 0.5 * (z + Math.sqrt(z * z + 4));
    return polish(x * x, z, 1 / Math.sqrt(x * x + w0 * w0));
  }

  /** The smallest root, for z not above {@link #WINDMILL_HIGHEST}. */
  static double windmill(double x, double z) {
    double w0 = 0.5 * (z - Math.sqrt(z * z - 4));
    return polish(x * x, z, 1 / Math.sqrt(x * x + w0 * w0));
  }

  private static double polish(double xx, double z, double guess) {
    double v = guess;
    double step;
    do {
      double w = z + v;
      double q = xx + w * w;
      step = halley(v, w, q, v * v * q - 1);
      v -= step;
    } while (Math.abs(step) > LAST_STEP * v);
    return v;
  }

  /** What Halley's iteration takes from v, where P has the value p. */
  private static double halley(double v, double w, double q, double p) {
    double p1 = 2 * v * (q + v * w);
    double p2 = 2 * (q + v * (4 * w + v));
    return 2 * p * p1 / (2 * p1 * p1 - p * p2);
  }

  /** The only root, for x not below {@link #SINGLE_ROOT_EDGEWISE}, any z. */
  static double single(double x, double z) {
    if (z >= CLIMB_LOWEST) {
      return climb(x, z);
    }
    if (z <= WINDMILL_HIGHEST) {
      return windmill(x, z);
    }
    return bracketed(x * x, z, 0, 1 / x, true);
  }

  /** The largest root, any x and z. */
  static double largest(double x, double z) {
    if (z >= CLIMB_LOWEST) {
      return climb(x, z);
    }
    if (x >= SINGLE_ROOT_EDGEWISE) {
      return single(x, z);
    }
    if (x == 0) {
      return axialClimb(z);
    }
    double r = upperTurn(x);
    return z >= turningAxial(r) ? upperBranch(x, z, r) : smallest(x, z);
  }

  /** The smallest root, any x and z. */
  static double smallest(double x, double z) {
    if (x >= SINGLE_ROOT_EDGEWISE) {
      return single(x, z);
    }
    if (z <= WINDMILL_HIGHEST) {
      return windmill(x, z);
    }
    if (z <= -2) {
      return nearIdealWindmill(x, z);
    }
    if (z >= CLIMB_LOWEST) {
      return climb(x, z);
    }
    if (x == 0) {
      return axialClimb(z);
    }
    double r = lowerTurn(x);
    return z <= turningAxial(r) ? lowerBranch(x, z, r) : upperBranch(x, z, upperTurn(x));
  }

  /** All roots in rising order: one, or three, or two where two of the three coincide. */
  static double[] all(double x, double z) {
    double smallest = smallest(x, z);
    double largest = largest(x, z);
    if (smallest == largest) {
      return new double[] {largest};
    }
    double middle;
    if (x == 0) {
      double half = 0.5 * z;
      middle = Math.sqrt((half - 1) * (half + 1)) - half;
    } else {
      double low = -wOf(lowerTurn(x)) - z;
      double high = -wOf(upperTurn(x)) - z;
      middle = bracketed(x * x, z, low, high, false);
    }
    return middle > smallest && middle < largest
        ? new double[] {smallest, middle, largest}
        : new double[] {smallest, largest};
  }

  private static double wOf(double r) {
    return r * Math.sqrt(r);
  }

  private static double turningAxial(double r) {
    return -wOf(r) - 1 / Math.sqrt(r);
  }

  private static double upperBranch(double x, double z, double r) {
    return bracketed(x * x, z, -wOf(r) - z, axialClimb(z), true);
  }

  private static double lowerBranch(double x, double z, double r) {
    return bracketed(x * x, z, 0, -wOf(r) - z, true);
  }

  /** The solution of r^3 - r + x^2 = 0 near 1, where the windmill branch ends. */
  private static double lowerTurn(double x) {
    return 2 / Math.sqrt(3) * FastMath.cos(turnAngle(x));
  }

  /** The solution near x^2, where the climb branch ends. */
  private static double upperTurn(double x) {
    return 2 / Math.sqrt(3) * FastMath.cos(turnAngle(x) - 2 * Math.PI / 3);
  }

  private static double turnAngle(double x) {
    double share = x / SINGLE_ROOT_EDGEWISE;
    return FastMath.acos(-Math.min(1, share * share)) / 3;
  }

  /**
   * The smallest root where -2.1 &lt; z &lt;= -2. The equation is nearly double there, so it is
   * written for p = -w - 1 and the exact difference d = -2 - z: p^2 = (1 + p) d + v^2 x^2 / (1 - v
   * w).
   */
  private static double nearIdealWindmill(double x, double z) {
    double d = -2 - z;
    UnivariateFunction excess =
        p -> {
          double u = 1 + p;
          double v = 1 + d - p;
          return p * p - u * d - v * v * x * x / (1 + v * u);
        };
    double p =
        new BracketingNthOrderBrentSolver(1e-15, 1e-17, 0, 5)
            .solve(MOST_STEPS, excess, 0, 1 + d, AllowedSolution.RIGHT_SIDE);
    return 1 + d - p;
  }

  /**
   * Halley's iteration kept inside a bracket, for the places where the branches bend.
   *
   * @param rising whether P is negative at {@code low}
   */
  private static double bracketed(double xx, double z, double low, double high, boolean rising) {
    double a = low;
    double b = high;
    double v = 0.5 * (a + b);
    for (int i = 0; i < MOST_STEPS; i++) {
      double w = z + v;
      double q = xx + w * w;
      double p = v * v * q - 1;
      if (p == 0) {
        return v;
      }
      if (p > 0 == rising) {
        b = v;
      } else {
        a = v;
      }
      double next = v - halley(v, w, q, p);
      if (!(next >= a && next <= b)) {
        next = 0.5 * (a + b);
      }
      double step = Math.abs(next - v);
      v = next;
      if (!(step > 2e-16 * v)) {
        return v;
      }
    }
    return v;
  }
}
