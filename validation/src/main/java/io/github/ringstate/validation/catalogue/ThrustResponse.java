package io.github.ringstate.validation.catalogue;

import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.validation.numerics.Lag;
import java.util.ArrayList;
import java.util.List;

/**
 * Thrust of a rotor held fixed while its collective is raised quickly, by two equations for the
 * induced velocity.
 *
 * @param rotor the rotor
 * @param density density of the air, kg/m3
 * @param tipSpeed tip speed, m/s
 * @param from collective at the beginning, rad
 * @param to collective at the end, rad
 * @param rise how long the collective takes, s
 */
record ThrustResponse(
    Rotor rotor, double density, double tipSpeed, double from, double to, double rise) {

  /** Rate of change of the induced velocity. */
  @FunctionalInterface
  interface Inflow {
    double rate(double thrust, double induced);
  }

  /** The library's: a lag towards the steady value of the thrust at that instant. */
  double lagged(double thrust, double induced) {
    double hover = rotor.hoverInducedVelocity(thrust, density);
    return (hover - induced) / rotor.inflowLag().time(0, induced, induced, hover);
  }

  /** Carpenter and Fridovich's: 0.637 rho (4/3) pi R^3 dv/dt = T - 2 rho A v^2. */
  double apparentMass(double thrust, double induced) {
    double mass = 0.637 * density * 4.0 / 3 * Math.PI * Math.pow(rotor.radius(), 3);
    return (thrust - 2 * density * rotor.area() * induced * induced) / mass;
  }

  /** What the square of the induced velocity is multiplied by to give the steady thrust, kg/m. */
  double twiceDensityArea() {
    return 2 * density * rotor.area();
  }

  double thrust(double time, double induced) {
    double share = Math.min(1, Math.max(0, time / rise));
    double collective = from + share * (to - from);
    return rotor.thrust(density, tipSpeed, collective, 0, induced);
  }

  /** Times, s, and thrusts over the final thrust. */
  List<double[]> history(Inflow inflow) {
    double start = steady(from);
    double end = thrust(rise, steady(to));
    List<double[]> points = new ArrayList<>();
    Lag equation = (t, v) -> inflow.rate(thrust(t, v), v);
    double induced = start;
    double step = 0.002;
    points.add(new double[] {0, thrust(0, start) / end});
    for (int i = 0; i < 500; i++) {
      double t = i * step;
      induced = equation.after(t, induced, t + step, 1e-9, step);
      points.add(new double[] {t + step, thrust(t + step, induced) / end});
    }
    return points;
  }

  /** Greatest thrust over final thrust, less one. */
  double overshoot(Inflow inflow) {
    return history(inflow).stream().mapToDouble(p -> p[1]).max().orElse(Double.NaN) - 1;
  }

  /** The induced velocity that carries its own thrust, by halving an interval. */
  private double steady(double collective) {
    double low = 0;
    double high = 50;
    for (int i = 0; i < 80; i++) {
      double middle = 0.5 * (low + high);
      double thrust = rotor.thrust(density, tipSpeed, collective, 0, middle);
      if (thrust > 2 * density * rotor.area() * middle * middle) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
