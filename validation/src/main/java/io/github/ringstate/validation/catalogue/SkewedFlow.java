package io.github.ringstate.validation.catalogue;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The induced velocity that a pressure on the disc causes in a stream at an angle to the shaft, by
 * quadrature: along each streamline the stream's speed times the change of velocity is the gradient
 * of the pressure, from far upstream to the disc (linear theory of the actuator disc).
 */
final class SkewedFlow {

  private static final int RADII = 20;
  private static final int AZIMUTHS = 16;
  private static final int ALONG = 120;

  private SkewedFlow() {}

  /**
   * Mean, sine and cosine part of the axial induced velocity times the stream's speed.
   *
   * @param mean mean over the disc
   * @param sine 4 / pi times the integral of velocity times r sin psi
   * @param cosine 4 / pi times the integral of velocity times r cos psi
   */
  record Response(double mean, double sine, double cosine) {
    Response minus(Response other) {
      return new Response(mean - other.mean, sine - other.sine, cosine - other.cosine);
    }
  }

  /**
   * The response to a pressure whose moment axis lies along or across the stream.
   *
   * @param across whether the pressure's cosine is counted across the stream instead of along it
   */
  static Response of(PressurePotential pressure, double skew, boolean across) {
    GaussIntegratorFactory factory = new GaussIntegratorFactory();
    GaussIntegrator overNu = factory.legendre(RADII, 0, 1);
    GaussIntegrator along = factory.legendre(ALONG, 0, 1);
    double mean = 0;
    double sine = 0;
    double cosine = 0;
    for (int i = 0; i < overNu.getNumberOfPoints(); i++) {
      double nu = overNu.getPoint(i);
      double r = Math.sqrt(1 - nu * nu);
      for (int j = 0; j < AZIMUTHS; j++) {
        double psi = 2 * Math.PI * (j + 0.5) / AZIMUTHS;
        double x = r * Math.cos(psi);
        double y = r * Math.sin(psi);
        double v = velocity(pressure, skew, across, x, y, along);
        double share = overNu.getWeight(i) * nu * 2 * Math.PI / AZIMUTHS;
        mean += share * v / Math.PI;
        sine += share * v * y * 4 / Math.PI;
        cosine += share * v * x * 4 / Math.PI;
      }
    }
    return new Response(mean, sine, cosine);
  }

  private static double velocity(
      PressurePotential pressure,
      double skew,
      boolean across,
      double x,
      double y,
      GaussIntegrator along) {
    double forward = Math.sin(skew);
    double up = Math.cos(skew);
    double sum = 0;
    for (int k = 0; k < along.getNumberOfPoints(); k++) {
      double t = along.getPoint(k);
      double root = t / (1 - t);
      double s = root * root;
      double stretch = 2 * root / ((1 - t) * (1 - t));
      double px = x + s * forward;
      double z = s * up;
      double h = Math.min(1e-4, 1e-3 * z);
      double a = across ? y : px;
      double b = across ? px : y;
      double gradient = (pressure.value(a, b, z + h) - pressure.value(a, b, z - h)) / (2 * h);
      sum -= along.getWeight(k) * stretch * gradient;
    }
    return sum;
  }
}
