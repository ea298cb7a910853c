package io.github.ringstate.dynamics;

import io.github.ringstate.integrate.DormandPrince;
import io.github.ringstate.integrate.FastPropagator;
import io.github.ringstate.integrate.FastSettings;
import io.github.ringstate.integrate.PrecisePropagator;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;

/**
 * Propagators for the equations of motion. They keep the least vertical speed; the fast one takes
 * errors in scales of about 1 m, 1 m/s and 0.2 rad, and knows that the induced velocity decays
 * fastest, 12 to 60 a second.
 */
public final class Propagators {

  /** Error of a step that is let pass; chosen by measurement, see the tests. */
  private static final double FAST_TOLERANCE = 2.5e-4;

  private static final double PRECISE_TOLERANCE = 1e-9;

  /** Vertical acceleration of a descent that lingers, m/s2, and its rate of descent, m/s. */
  private static final double HARDLY_CHANGING = 0.1;

  private static final double SINKING = 2;

  private Propagators() {}

  /**
   * The fast propagator at its standard tolerance, with losses of height exact to a tenth of a
   * foot.
   *
   * @param <K> what names events
   * @return a new one
   */
  public static <K> FastPropagator<K, Motion> fast() {
    return fast(FAST_TOLERANCE);
  }

  /**
   * The fast propagator. What it times is how long a descent lingers: sinks, hardly changes, and is
   * where a faster sink grows by itself. From there small errors grow as well, so a flight that
   * lingers for long is not known well.
   *
   * @param tolerance error of a step that is let pass, in units of about 1 m, 1 m/s, 0.2 rad,
   *     positive
   * @param <K> what names events
   * @return a new one
   */
  public static <K> FastPropagator<K, Motion> fast(double tolerance) {
    return new FastPropagator<>(
        new FastSettings<>(
            State.inverseScales(),
            tolerance,
            State.SPEED_UP,
            State.INDUCED,
            Motion::inflowDecay,
            Propagators::lingers));
  }

  private static boolean lingers(Motion motion) {
    return Math.abs(motion.verticalAcceleration()) < HARDLY_CHANGING
        && motion.verticalSpeed() < -SINKING
        && motion.sinkFeedsItself();
  }

  /**
   * Dormand and Prince's pair of order 8 with error estimates of order 5 and 3, at a tolerance that
   * leaves heights exact to far below a hundredth of a foot.
   *
   * @param <K> what names events
   * @return a new one
   */
  public static <K> PrecisePropagator<K, Motion> precise() {
    return dormandPrince(PRECISE_TOLERANCE);
  }

  /**
   * Dormand and Prince's pair of order 8 with error estimates of order 5 and 3.
   *
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @param <K> what names events
   * @return a new one
   */
  public static <K> PrecisePropagator<K, Motion> dormandPrince(double tolerance) {
    return with(DormandPrince::new, tolerance);
  }

  /**
   * Gragg, Bulirsch and Stoer's extrapolation, as a second opinion.
   *
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @param <K> what names events
   * @return a new one
   */
  public static <K> PrecisePropagator<K, Motion> extrapolation(double tolerance) {
    return with(GraggBulirschStoerIntegrator::new, tolerance);
  }

  /**
   * Any adaptive integrator of Hipparchus.
   *
   * @param maker makes the integrator
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @param <K> what names events
   * @return a new one
   */
  public static <K> PrecisePropagator<K, Motion> with(
      PrecisePropagator.Maker maker, double tolerance) {
    return new PrecisePropagator<>(maker, tolerance, State.SPEED_UP);
  }
}
