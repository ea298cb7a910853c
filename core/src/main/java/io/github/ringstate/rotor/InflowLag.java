package io.github.ringstate.rotor;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.SoftLimit;
import io.github.ringstate.quantity.Unit;

/** The lag with which the induced velocity follows the thrust, by the apparent mass of the air. */
public final class InflowLag {

  /**
   * Apparent mass of the air over density times radius cubed times pi. Default 0.849333, range 0.3
   * to 1.5 (a pure number).
   */
  public static final Parameter APPARENT_MASS =
      Parameter.of(
          "apparent mass coefficient",
          Unit.ONE,
          0.3,
          1.5,
          0.637 * 4 / 3,
          "63.7 per cent of the sphere about the rotor (Carpenter and Fridovich, NACA TN 3044,"
              + " 1953; from memory)");

  /**
   * Least mass flow through the disc in the inflow lag, in units of hover induced velocity. Default
   * 1, range 0.2 to 2 (a pure number).
   */
  public static final Parameter MINIMUM_MASS_FLOW =
      Parameter.of(
          "minimum mass flow",
          Unit.ONE,
          0.2,
          2,
          1,
          "assumed: keeps the lag finite where the mean flow through the disc vanishes");

  /**
   * Square of a flow through the disc, in hover induced velocities, that is added so that none can
   * be divided by (numerical).
   */
  private static final double STILL_FLOW_SQUARED = 1e-4;

  /** Over what the least mass flow is rounded off, to either side, in hover induced velocities. */
  private static final double MINIMUM_FLOW_ROUNDING = 0.7;

  private final double inverseLagLength;
  private final double minimumMassFlow;

  InflowLag(ParameterSet numbers, double radius) {
    inverseLagLength = 2 / (numbers.si(APPARENT_MASS) * radius);
    minimumMassFlow = numbers.si(MINIMUM_MASS_FLOW);
  }

  /**
   * Rate at which the induced velocity follows the thrust: one over its time constant.
   *
   * <p>The apparent mass m of the air about the rotor is accelerated by the thrust that the mean
   * flow does not yet carry (Carpenter and Fridovich, NACA TN 3044, 1953). Linearised, m dv/dt = -2
   * rho A Vm (v - v0), with the mass flow Vm = (x^2 + (w + v) w) / sqrt(x^2 + w^2) of Pitt and
   * Peters (Vertica 5, 1981), here in m/s. In hover Vm = 2 vh and the time constant is 0.212 R /
   * vh. In the vortex ring the mean flow may vanish while air still passes through the disc both
   * ways, so Vm is bounded from below, the corner rounded off.
   *
   * @param edgewise the edgewise speed, m/s
   * @param inflow the total axial flow w, m/s
   * @param induced the induced velocity v, m/s
   * @param hoverInduced the hover induced velocity vh that scales the bound, m/s
   * @return the rate, 1/s
   */
  public double rate(double edgewise, double inflow, double induced, double hoverInduced) {
    double x2 = edgewise * edgewise;
    double floor = minimumMassFlow * hoverInduced;
    double vh2 = hoverInduced * hoverInduced;
    double massFlow =
        (x2 + (inflow + induced) * inflow)
            / Math.sqrt(x2 + inflow * inflow + STILL_FLOW_SQUARED * vh2);
    return inverseLagLength
        * (floor + SoftLimit.positive(massFlow - floor, MINIMUM_FLOW_ROUNDING * hoverInduced));
  }

  /**
   * Time constant with which the induced velocity follows the thrust; see {@link #rate}.
   *
   * @param edgewise the edgewise speed, m/s
   * @param inflow the total axial flow w, m/s
   * @param induced the induced velocity v, m/s
   * @param hoverInduced the hover induced velocity vh that scales the bound, m/s
   * @return the time constant, s
   */
  public double time(double edgewise, double inflow, double induced, double hoverInduced) {
    return 1 / rate(edgewise, inflow, induced, hoverInduced);
  }
}
