package io.github.ringstate.validation.numerics;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** One quantity that changes at a rate of its own, solved by Hipparchus. */
@FunctionalInterface
public interface Lag extends OrdinaryDifferentialEquation {

  /**
   * The rate of change.
   *
   * @param time the time
   * @param value the quantity
   * @return the rate
   */
  double rate(double time, double value);

  @Override
  default int getDimension() {
    return 1;
  }

  @Override
  default double[] computeDerivatives(double time, double[] state) {
    return new double[] {rate(time, state[0])};
  }

  /**
   * The quantity some time later.
   *
   * @param from the time at the start
   * @param value the quantity then
   * @param to the time at the end
   * @param shortest the shortest step
   * @param longest the longest step
   * @return the quantity at the end, to a tolerance of 1e-11
   */
  default double after(double from, double value, double to, double shortest, double longest) {
    return new DormandPrince853Integrator(shortest, longest, 1e-11, 1e-11)
        .integrate(this, new ODEState(from, new double[] {value}), to)
        .getPrimaryState()[0];
  }
}
