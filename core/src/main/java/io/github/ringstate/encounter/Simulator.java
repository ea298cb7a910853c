package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.integrate.PrecisePropagator;
import io.github.ringstate.integrate.Propagator;
import java.util.function.Supplier;

/**
 * A way of flying encounters: each flight gets a propagator of its own, so that any number of
 * threads may share a simulator.
 */
public final class Simulator {

  private final Supplier<Propagator<Happening, Motion>> propagators;

  /**
   * Creates a simulator.
   *
   * @param propagators makes what it flies with; see {@link Propagators}
   */
  public Simulator(Supplier<Propagator<Happening, Motion>> propagators) {
    this.propagators = propagators;
  }

  /**
   * The usual precise simulator.
   *
   * @return a new one
   */
  public static Simulator precise() {
    return new Simulator(Propagators::precise);
  }

  /**
   * A precise simulator with Dormand and Prince's pair of order 8.
   *
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @return a new one
   */
  public static Simulator dormandPrince(double tolerance) {
    return new Simulator(() -> Propagators.dormandPrince(tolerance));
  }

  /**
   * A precise simulator with Gragg, Bulirsch and Stoer's extrapolation, as a second opinion.
   *
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @return a new one
   */
  public static Simulator extrapolation(double tolerance) {
    return new Simulator(() -> Propagators.extrapolation(tolerance));
  }

  /**
   * A simulator with any adaptive integrator of Hipparchus.
   *
   * @param maker makes the integrator
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @return a new one
   */
  public static Simulator with(PrecisePropagator.Maker maker, double tolerance) {
    return new Simulator(() -> Propagators.with(maker, tolerance));
  }

  /**
   * The fast simulator at its standard tolerance.
   *
   * @return a new one
   */
  public static Simulator fast() {
    return new Simulator(Propagators::fast);
  }

  /**
   * A fast simulator.
   *
   * @param tolerance error of a step that is let pass, in units of about 1 m, 1 m/s, 0.2 rad,
   *     positive
   * @return a new one
   */
  public static Simulator fast(double tolerance) {
    return new Simulator(() -> Propagators.fast(tolerance));
  }

  /** What one flight is flown with. */
  Propagator<Happening, Motion> propagator() {
    return propagators.get();
  }
}
