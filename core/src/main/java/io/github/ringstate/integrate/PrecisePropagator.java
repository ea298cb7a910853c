package io.github.ringstate.integrate;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.LocalizedODEFormats;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.sampling.ODEStepHandler;
import org.jspecify.annotations.Nullable;

/**
 * Propagates with an integrator of Hipparchus that chooses its own steps, and locates events to
 * within a nanosecond or so: the yardstick for the faster way.
 *
 * <p>A quantity that passes through zero and back within a twentieth of a second may go unseen,
 * unless its event says how fast it changes at most. The least value of the watched quantity is
 * that among the ends of legs and what was noted.
 *
 * @param <K> what names events
 * @param <V> the view of an instant
 */
public final class PrecisePropagator<K, V> implements Propagator<K, V> {

  /** Makes an integrator for a leg. */
  @FunctionalInterface
  public interface Maker {
    /**
     * Makes an integrator.
     *
     * @param minimumStep the least step
     * @param maximumStep the greatest step
     * @param absolute the absolute tolerance
     * @param relative the relative tolerance
     * @return a fresh integrator
     */
    AdaptiveStepsizeIntegrator make(
        double minimumStep, double maximumStep, double absolute, double relative);
  }

  private static final double MINIMUM_STEP = 1e-9;
  private static final double MAXIMUM_STEP = 0.1;
  private static final double FIRST_STEP = 1e-3;
  private static final double CHECK_INTERVAL = 0.05;
  private static final double TIME_TOLERANCE = 1e-10;
  private static final int ITERATIONS = 100;
  private static final double NODES_APART = 0.02;

  private final Maker maker;
  private final double tolerance;
  private final int watched;
  private final EventLog<K> log = new EventLog<>();
  private @Nullable Sampler<V> sampler;
  private double firstTime;
  private double[] firstState = new double[0];
  private double time;
  private double[] state = new double[0];
  private double least;
  private long evaluations;
  private long budget = Long.MAX_VALUE;
  private @Nullable NodeListener<V> listener;
  private volatile @Nullable Thread user;

  /**
   * Creates a propagator.
   *
   * @param maker makes the integrator of each leg
   * @param tolerance the relative tolerance, and the absolute one in the units of the state,
   *     positive
   * @param watched the place of the quantity whose least value is kept
   */
  public PrecisePropagator(Maker maker, double tolerance, int watched) {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException(FastSettings.TOLERANCE + tolerance);
    }
    this.maker = maker;
    this.tolerance = tolerance;
    this.watched = watched;
  }

  @Override
  public void start(double from, double[] at) {
    firstTime = from;
    firstState = at.clone();
    restart(from);
  }

  @Override
  public void restart(double until) {
    user = Thread.currentThread();
    time = firstTime;
    state = firstState;
    least = state[watched];
    evaluations = 0;
    log.clear();
  }

  @Override
  public @Nullable K propagate(Equations<V> equations, double end, List<Event<K, V>> events) {
    mine();
    if (Double.isNaN(end)) {
      throw new IllegalArgumentException(NO_END);
    }
    if (!(end - time > SHORTEST_LEG)) {
      return null;
    }
    AdaptiveStepsizeIntegrator integrator =
        maker.make(MINIMUM_STEP, MAXIMUM_STEP, tolerance, tolerance);
    integrator.setInitialStepSize(Math.min(FIRST_STEP, (end - time) / 2));
    Leg leg = new Leg(equations);
    List<Watch> watches = events.stream().map(event -> new Watch(event, leg)).toList();
    watches.forEach(integrator::addEventDetector);
    if (sampler != null) {
      sampler.begin(time);
      integrator.addStepHandler(sampling(sampler, leg));
    }
    if (listener != null) {
      listener.at(NodeListener.Node.BEGIN, equations.at(time, state));
      integrator.addStepHandler(telling(listener, leg));
    }
    ODEStateAndDerivative last = integrated(integrator, leg, end);
    mine();
    time = last.getTime();
    state = last.getPrimaryState();
    least = Math.min(least, state[watched]);
    for (Watch watch : watches) {
      if (watch.stopped) {
        return watch.event.kind();
      }
    }
    return null;
  }

  private ODEStateAndDerivative integrated(
      AdaptiveStepsizeIntegrator integrator, Leg leg, double end) {
    try {
      return ((ODEIntegrator) integrator).integrate(leg, new ODEState(time, state), end);
    } catch (MathRuntimeException failed) {
      if (failed.getSpecifier()
          == LocalizedODEFormats.MINIMAL_STEPSIZE_REACHED_DURING_INTEGRATION) {
        throw new UnfinishedLegException(leg.viewTime, evaluations);
      }
      throw failed;
    }
  }

  @Override
  public @Nullable K propagateShared(Equations<V> equations, double end, List<Event<K, V>> events) {
    return propagate(equations, end, events);
  }

  private void mine() {
    if (user != Thread.currentThread()) {
      throw new IllegalStateException(TWO_THREADS);
    }
  }

  @Override
  public void sample(@Nullable Sampler<V> taker) {
    sampler = taker;
  }

  @Override
  public void listen(@Nullable NodeListener<V> hears) {
    listener = hears;
  }

  @Override
  public void budget(long most) {
    budget = most;
  }

  @Override
  public double time() {
    return time;
  }

  @Override
  public double state(int index) {
    return state[index];
  }

  @Override
  public V at(Equations<V> equations) {
    return equations.at(time, state);
  }

  @Override
  public double least() {
    return least;
  }

  @Override
  public EventLog<K> log() {
    return log;
  }

  @Override
  public void note(K kind) {
    log.add(kind, time, state);
  }

  /** The equations of a leg, and their view of an instant, worked out once for all who ask. */
  private final class Leg implements OrdinaryDifferentialEquation {

    private final Equations<V> equations;
    private double viewTime = Double.NaN;
    private double[] viewState = new double[0];
    private @Nullable V view;
    private @Nullable ODEStateAndDerivative viewed;

    Leg(Equations<V> equations) {
      this.equations = equations;
    }

    @Override
    public int getDimension() {
      return equations.dimension();
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      if (Thread.currentThread().isInterrupted()) {
        throw new CancellationException(INTERRUPTED);
      }
      if (++evaluations > budget) {
        throw new UnfinishedLegException(t, evaluations - 1);
      }
      double[] rates = new double[y.length];
      viewed = null;
      viewTime = t;
      viewState = y.clone();
      view = equations.rates(t, viewState, rates);
      for (double rate : rates) {
        if (Double.isNaN(rate)) {
          throw new ArithmeticException(NOT_A_NUMBER + t + " s");
        }
      }
      return rates;
    }

    V at(ODEStateAndDerivative state) {
      V known = view;
      if (known != null && state == viewed) {
        return known;
      }
      viewed = state;
      double[] y = state.getPrimaryState();
      if (known != null && state.getTime() == viewTime && Arrays.equals(y, viewState)) {
        return known;
      }
      viewTime = state.getTime();
      viewState = y;
      V now = equations.at(viewTime, y);
      view = now;
      return now;
    }
  }

  private final class Watch implements ODEEventDetector, ODEEventHandler {

    private final Event<K, V> event;
    private final Leg leg;
    private boolean stopped;

    Watch(Event<K, V> event, Leg leg) {
      this.event = event;
      this.leg = leg;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return (state, forward) -> Math.min(CHECK_INTERVAL, event.unseen(g(state)));
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
    public double g(ODEStateAndDerivative at) {
      return event.value().applyAsDouble(leg.at(at));
    }

    @Override
    public Action eventOccurred(
        ODEStateAndDerivative at, ODEEventDetector detector, boolean increasing) {
      if (!event.happens(increasing, leg.at(at))) {
        return Action.CONTINUE;
      }
      double[] there = at.getPrimaryState();
      log.add(event.kind(), at.getTime(), there);
      least = Math.min(least, there[watched]);
      stopped = event.stops();
      return stopped ? Action.STOP : Action.CONTINUE;
    }
  }

  private ODEStepHandler sampling(Sampler<V> taker, Leg leg) {
    return step -> {
      double until = step.getCurrentState().getTime();
      while (taker.due() <= until) {
        taker.take(leg.at(step.getInterpolatedState(taker.due())));
      }
    };
  }

  /** Tells of steps in parts that are short enough for a cubic. */
  private ODEStepHandler telling(NodeListener<V> hears, Leg leg) {
    return step -> {
      double from = step.getPreviousState().getTime();
      double until = step.getCurrentState().getTime();
      int parts = (int) Math.ceil((until - from) / NODES_APART);
      for (int i = 1; i < parts; i++) {
        double at = from + (until - from) * i / parts;
        hears.at(NodeListener.Node.WITHIN, leg.at(step.getInterpolatedState(at)));
      }
      hears.at(NodeListener.Node.END, leg.at(step.getCurrentState()));
    };
  }
}
