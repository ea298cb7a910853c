package io.github.ringstate.validation.catalogue;

/**
 * Pressure potentials of a disc of unit radius in ellipsoidal coordinates: the solutions of
 * Laplace's equation on which Pitt and Peters' theory rests, as Kinner wrote them.
 *
 * <p>With x = sqrt(1 - nu^2) sqrt(1 + eta^2) cos psi and z = nu eta, the disc is eta = 0, and on it
 * nu = sqrt(1 - r^2). Each potential is scaled to its value on the disc.
 */
enum PressurePotential {
  /** P1(nu): pressure sqrt(1 - r^2); carries thrust. */
  THRUST {
    @Override
    double at(double nu, double eta, double x) {
      return nu * (1 - eta * acot(eta));
    }
  },
  /** P3(nu): carries nothing, and makes the pressure of {@link #THRUST} vanish at the hub. */
  HUB {
    @Override
    double at(double nu, double eta, double x) {
      if (eta > 40) {
        return 0;
      }
      double q = 0.5 * eta * (5 * eta * eta + 3) * acot(eta) - 2.5 * eta * eta - 2.0 / 3;
      return 0.5 * nu * (5 * nu * nu - 3) * q / (-2.0 / 3);
    }
  },
  /** P2(nu) of first order: pressure r sqrt(1 - r^2) cos psi; carries a moment. */
  MOMENT {
    @Override
    double at(double nu, double eta, double x) {
      if (eta > 400) {
        return 0;
      }
      double q = 3 * eta * acot(eta) - (3 * eta * eta + 2) / (1 + eta * eta);
      return -0.5 * nu * x * q;
    }
  };

  private static double acot(double eta) {
    return Math.atan2(1, eta);
  }

  /** The potential by ellipsoidal coordinates; beyond some distance, where it cancels, zero. */
  abstract double at(double nu, double eta, double x);

  /** The potential at a point above the disc, z positive. */
  double value(double x, double y, double z) {
    double excess = x * x + y * y + z * z - 1;
    double root = Math.sqrt(excess * excess + 4 * z * z);
    double large = 0.5 * (root + Math.abs(excess));
    double small = z * z / large;
    return excess > 0
        ? at(Math.sqrt(small), Math.sqrt(large), x)
        : at(Math.sqrt(large), Math.sqrt(small), x);
  }
}
