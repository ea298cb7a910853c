package io.github.ringstate.integrate;

import org.hipparchus.ode.EquationsMapper;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.interpolators.DormandPrince853StateInterpolator;
import org.jspecify.annotations.Nullable;

/**
 * Hipparchus' integrator of order 8(5,3) by Dormand and Prince, whose states within a step are
 * worked out once for all events that ask for them. A dozen events look at the same few instants of
 * each step; to interpolate for each of them anew took a fifth of a flight. Every number is that of
 * Hipparchus, to the last bit.
 */
public final class DormandPrince extends DormandPrince853Integrator {

  /**
   * Creates the integrator.
   *
   * @param minimumStep the least step
   * @param maximumStep the greatest step
   * @param absolute the absolute tolerance, in the units of the state
   * @param relative the relative tolerance
   */
  public DormandPrince(double minimumStep, double maximumStep, double absolute, double relative) {
    super(minimumStep, maximumStep, absolute, relative);
  }

  @Override
  protected DormandPrince853StateInterpolator createInterpolator(
      boolean forward,
      double[][] slopes,
      ODEStateAndDerivative globalPrevious,
      ODEStateAndDerivative globalCurrent,
      EquationsMapper mapper) {
    return new Remembering(
        forward, slopes, globalPrevious, globalCurrent, globalPrevious, globalCurrent, mapper);
  }

  /** Keeps the states that were asked for last. */
  private static final class Remembering extends DormandPrince853StateInterpolator {

    private static final long serialVersionUID = 1L;

    /** The ends of a step and of the parts that events divide it into. */
    private static final int KEPT = 4;

    private final double[] times = new double[KEPT];
    private final @Nullable ODEStateAndDerivative[] states = new ODEStateAndDerivative[KEPT];
    private int next;

    Remembering(
        boolean forward,
        double[][] slopes,
        ODEStateAndDerivative globalPrevious,
        ODEStateAndDerivative globalCurrent,
        ODEStateAndDerivative softPrevious,
        ODEStateAndDerivative softCurrent,
        EquationsMapper mapper) {
      super(forward, slopes, globalPrevious, globalCurrent, softPrevious, softCurrent, mapper);
    }

    @Override
    protected DormandPrince853StateInterpolator create(
        boolean forward,
        double[][] slopes,
        ODEStateAndDerivative globalPrevious,
        ODEStateAndDerivative globalCurrent,
        ODEStateAndDerivative softPrevious,
        ODEStateAndDerivative softCurrent,
        EquationsMapper mapper) {
      return new Remembering(
          forward, slopes, globalPrevious, globalCurrent, softPrevious, softCurrent, mapper);
    }

    @Override
    protected ODEStateAndDerivative computeInterpolatedStateAndDerivatives(
        EquationsMapper mapper, double time, double theta, double sinceStart, double untilEnd) {
      for (int i = 0; i < KEPT; i++) {
        ODEStateAndDerivative known = states[i];
        if (known != null && times[i] == time) {
          return known;
        }
      }
      ODEStateAndDerivative state =
          super.computeInterpolatedStateAndDerivatives(mapper, time, theta, sinceStart, untilEnd);
      times[next] = time;
      states[next] = state;
      next = (next + 1) % KEPT;
      return state;
    }
  }
}
