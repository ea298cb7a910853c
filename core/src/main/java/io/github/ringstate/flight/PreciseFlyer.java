package io.github.ringstate.flight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;
import org.jspecify.annotations.Nullable;

/**
 * Flies the equations of motion with an integrator of Hipparchus that chooses its own steps, and
 * locates events to within a nanosecond or so of flight.
 *
 * <p>A quantity that passes through zero and back within a twentieth of a second may go unseen.
 *
 * <p>This is the general path: the yardstick for any faster one.
 */
public final class PreciseFlyer implements Flyer {

  /** Makes an integrator for a leg. */
  @FunctionalInterface
  public interface Maker {
    /**
     * Makes an integrator.
     *
     * @param leastStep the least step, s
     * @param greatestStep the greatest step, s
     * @param absolute the absolute tolerance, SI units
     * @param relative the relative tolerance
     * @return a fresh integrator
     */
    AdaptiveStepsizeIntegrator make(
        double leastStep, double greatestStep, double absolute, double relative);
  }

  private static final double LEAST_STEP = 1e-9;
  private static final double GREATEST_STEP = 0.1;
  private static final double FIRST_STEP = 1e-3;
  private static final double CHECK_INTERVAL = 0.05;
  private static final double TIME_TOLERANCE = 1e-10;
  private static final int ITERATIONS = 100;

  private final Maker maker;
  private final double tolerance;

  private PreciseFlyer(Maker maker, double tolerance) {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException("the tolerance must be positive, not " + tolerance);
    }
    this.maker = maker;
    this.tolerance = tolerance;
  }

  /**
   * Dormand and Prince's pair of order 8 with error estimates of order 5 and 3, at a tolerance that
   * leaves heights exact to far below a hundredth of a foot.
   *
   * @return the usual precise flyer
   */
  public static PreciseFlyer standard() {
    return dormandPrince(1e-9);
  }

  /**
   * Dormand and Prince's pair of order 8 with error estimates of order 5 and 3.
   *
   * @param tolerance the relative tolerance, and the absolute one in SI units
   * @return the flyer
   */
  public static PreciseFlyer dormandPrince(double tolerance) {
    return new PreciseFlyer(DormandPrince853Integrator::new, tolerance);
  }

  /**
   * Gragg, Bulirsch and Stoer's extrapolation, as a second opinion.
   *
   * @param tolerance the relative tolerance, and the absolute one in SI units
   * @return the flyer
   */
  public static PreciseFlyer extrapolation(double tolerance) {
    return new PreciseFlyer(GraggBulirschStoerIntegrator::new, tolerance);
  }

  /**
   * Any adaptive integrator of Hipparchus.
   *
   * @param maker makes the integrator
   * @param tolerance the relative tolerance, and the absolute one in SI units
   * @return the flyer
   */
  public static PreciseFlyer with(Maker maker, double tolerance) {
    return new PreciseFlyer(maker, tolerance);
  }

  @Override
  public Leg fly(
      EquationsOfMotion motion,
      ControlLaw law,
      double start,
      double[] state,
      double end,
      List<FlightEvent> events,
      @Nullable History history) {
    AdaptiveStepsizeIntegrator integrator =
        maker.make(LEAST_STEP, GREATEST_STEP, tolerance, tolerance);
    integrator.setInitialStepSize(Math.min(FIRST_STEP, (end - start) / 2));
    Instant instant = new Instant(motion, law);
    List<Occurrence> occurrences = new ArrayList<>();
    Watch[] watches =
        events.stream().map(event -> new Watch(event, instant, occurrences)).toArray(Watch[]::new);
    for (Watch watch : watches) {
      integrator.addEventDetector(watch);
    }
    if (history != null) {
      history.begin(start);
      integrator.addStepHandler(new Sampler(history, instant));
    }
    ODEStateAndDerivative last =
        ((ODEIntegrator) integrator)
            .integrate(new RightHandSide(motion, law), new ODEState(start, state), end);
    Optional<EventKind> stop =
        Arrays.stream(watches).filter(w -> w.stopped).map(w -> w.event.kind()).findFirst();
    return new Leg(last.getTime(), last.getPrimaryState(), stop, List.copyOf(occurrences));
  }

  private record RightHandSide(EquationsOfMotion motion, ControlLaw law)
      implements OrdinaryDifferentialEquation {

    @Override
    public int getDimension() {
      return State.SIZE;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      return motion.at(t, y, law).rates.clone();
    }
  }

  /** The motion at an integrator's state, worked out once for all who ask. */
  private static final class Instant {

    private final EquationsOfMotion motion;
    private final ControlLaw law;

    Instant(EquationsOfMotion motion, ControlLaw law) {
      this.motion = motion;
      this.law = law;
    }

    /** All events of a leg ask for the same instants one after the other. */
    Motion at(ODEStateAndDerivative state) {
      return motion.again(state.getTime(), state.getPrimaryState(), law);
    }
  }

  private static final class Watch implements ODEEventDetector, ODEEventHandler {

    private final FlightEvent event;
    private final Instant instant;
    private final List<Occurrence> occurrences;
    private boolean stopped;

    Watch(FlightEvent event, Instant instant, List<Occurrence> occurrences) {
      this.event = event;
      this.instant = instant;
      this.occurrences = occurrences;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return AdaptableInterval.of(CHECK_INTERVAL);
    }

    @Override
    public int getMaxIterationCount() {
      return ITERATIONS;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, TIME_TOLERANCE, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return this;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return event.value().applyAsDouble(instant.at(state));
    }

    @Override
    public Action eventOccurred(
        ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
      Motion motion = instant.at(state);
      if (!event.happens(increasing, motion)) {
        return Action.CONTINUE;
      }
      occurrences.add(Occurrence.of(event.kind(), motion));
      stopped = event.stops();
      return stopped ? Action.STOP : Action.CONTINUE;
    }
  }

  private record Sampler(History history, Instant instant) implements ODEStepHandler {

    @Override
    public void handleStep(ODEStateInterpolator interpolator) {
      double until = interpolator.getCurrentState().getTime();
      while (history.due() <= until) {
        history.take(instant.at(interpolator.getInterpolatedState(history.due())));
      }
    }
  }
}
