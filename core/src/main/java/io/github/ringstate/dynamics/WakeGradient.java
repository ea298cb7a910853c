package io.github.ringstate.dynamics;

import io.github.ringstate.rotor.InflowLag;

/**
 * The gradient of the induced velocity across the disc, made by the skew of the wake, and how it
 * acts back on the mean: three-state dynamic inflow (Pitt and Peters, Vertica 5, 1981; Peters and
 * HaQuang, Journal of the American Helicopter Society 33, 1988; matrices from memory) without
 * moments at the hub.
 *
 * <p>At radius r and an angle from the trailing edge of the disc the induced velocity is v + (r /
 * R) c cos(angle). With the wake at an angle alpha to the disc and a skew chi = 90 deg - alpha,
 *
 * <pre>
 *   L = [ 1/2                       (15 pi / 64) tan(chi / 2)        ]  over the mass flow Vm
 *       [ (15 pi / 64) tan(chi/2)   -4 sin alpha / (1 + sin alpha)   ]
 *   M = R diag(apparent mass, -16 / (45 pi))
 *   M (v, c)' + inverse(L) (v, c) = (thrust, no moment)
 * </pre>
 *
 * <p>With b = (15 pi / 64) tan(chi / 2), D = 4 sin alpha / (1 + sin alpha) and E = D / 2 + b^2 that
 * is, beside the rate of the lag of the mean alone ({@link InflowLag#rate}),
 *
 * <pre>
 *   v' = rate (steady - v) - rate / (2 E) (b c - 2 b^2 v)
 *   c' = rate (apparent mass) / (4 E 16 / (45 pi)) (2 b v - c)
 * </pre>
 *
 * <p>Steady flight has c = 2 b v = (15 pi / 32) tan(chi / 2) v, and the mean of the lag alone. The
 * gradient is kept along the nose and to the right; positive along the nose is more inflow over the
 * tail. The turning of these axes within its time constant, a twentieth of a second in hover, is
 * left out.
 */
final class WakeGradient {

  /** Coupling of mean and gradient over tan(chi / 2), (15 pi / 64). */
  private static final double SKEW = 15 * Math.PI / 64;

  /** Apparent mass of the gradient over density times radius cubed times pi, 16 / (45 pi). */
  private static final double MASS = 16 / (45 * Math.PI);

  /** Square of a flow, in hover induced velocities, that keeps the skew defined (numerical). */
  private static final double STILL_FLOW_SQUARED = 1e-4;

  private final double rateRatio;
  private final double stillFlow2;

  WakeGradient(double apparentMass, double hoverInduced) {
    rateRatio = apparentMass / (4 * MASS);
    stillFlow2 = STILL_FLOW_SQUARED * hoverInduced * hoverInduced;
  }

  /**
   * Adds the rates of the gradient, and to the rate of the mean what the gradient changes.
   *
   * @param at the motion
   * @param rates the rates; that of the induced velocity is set
   * @param rate the rate of the lag of the mean alone, 1/s
   * @param balanced whether the gradient counts as that of steady flight, whatever the state says
   */
  void add(Motion at, double[] rates, double rate, boolean balanced) {
    double[] y = at.state;
    Loads loads = at.loads;
    double induced = y[State.INDUCED];
    double through = loads.axial + induced;
    double upright = Math.sqrt(through * through + stillFlow2);
    double flow = Math.sqrt(loads.edgewiseSquared + through * through + stillFlow2);
    // tan(chi / 2) is x over (flow + upright), along the direction of flight
    double perSpeed = SKEW / (flow + upright);
    double alongNose = perSpeed * loads.alongNose;
    double alongRight = perSpeed * loads.alongRight;
    double b2 = perSpeed * perSpeed * loads.edgewiseSquared;
    double inverseE = 1 / (2 * upright / (flow + upright) + b2);
    loads.steadyGradientNose = 2 * alongNose * induced;
    loads.steadyGradientRight = 2 * alongRight * induced;
    if (balanced) {
      return;
    }
    double nose = y[State.GRADIENT_NOSE];
    double right = y[State.GRADIENT_RIGHT];
    double own = rate * rateRatio * inverseE;
    rates[State.GRADIENT_NOSE] = own * (loads.steadyGradientNose - nose);
    rates[State.GRADIENT_RIGHT] = own * (loads.steadyGradientRight - right);
    rates[State.INDUCED] -=
        0.5 * rate * inverseE * (alongNose * nose + alongRight * right - 2 * b2 * induced);
  }
}
