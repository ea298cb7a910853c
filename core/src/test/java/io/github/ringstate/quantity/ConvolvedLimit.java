package io.github.ringstate.quantity;

import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A second method for {@link SoftLimit}: the hard limit convolved with the bell 35/32 (1 - s^2)^3,
 * piece by piece between its corners by Gauss-Legendre quadrature, which is exact for polynomials.
 */
public final class ConvolvedLimit {

  private ConvolvedLimit() {}

  public static double within(double x, double limit) {
    double width = 0.5 * limit;
    return piece(x, width, -limit, limit);
  }

  static double positive(double x, double width) {
    return piece(x, width, 0, 1e9);
  }

  private static double piece(double x, double width, double low, double high) {
    double first = Math.min(Math.max((x - high) / width, -1), 1);
    double second = Math.min(Math.max((x - low) / width, -1), 1);
    return integral(x, width, low, high, -1, first)
        + integral(x, width, low, high, first, second)
        + integral(x, width, low, high, second, 1);
  }

  private static double integral(
      double x, double width, double low, double high, double from, double to) {
    if (!(to > from)) {
      return 0;
    }
    return new GaussIntegratorFactory()
        .legendre(6, from, to)
        .integrate(
            s -> {
              double rest = 1 - s * s;
              double hard = Math.min(Math.max(x - width * s, low), high);
              return hard * 35.0 / 32 * rest * rest * rest;
            });
  }
}
