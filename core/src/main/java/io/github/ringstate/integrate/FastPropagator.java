package io.github.ringstate.integrate;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/**
 * Propagates without allocation, for bulk work: steps of {@link BogackiShampine}, as long as {@link
 * StepControl} allows in the scales of its {@link FastSettings}.
 *
 * <p>Stability: where the fastest decay is known, steps are kept within the method's stability for
 * it, so that none is wasted on finding the limit. Where the state is all but steady they are
 * longer, and what decays too fast for them is solved exactly. Doing so everywhere saves steps but
 * costs more accuracy than they are worth: a quantity that follows its target closely is as smooth
 * as the target, and the plain method makes use of that.
 *
 * <p>Events are located on the cubic through values and rates at the ends of their step; a leg that
 * an event ends is then stepped anew to that instant.
 *
 * <p>A shared first leg is kept, step by step, so that propagations that differ only in what
 * follows it need not repeat it; unless something is noted on it.
 *
 * @param <K> what names events
 * @param <V> the view of an instant
 */
public final class FastPropagator<K, V> implements Propagator<K, V> {

  private final FastSettings<V> settings;
  private final BogackiShampine<V> step;
  private final StepControl control = new StepControl();
  private final EventSearch<K, V> search;
  private final Checkpoints checkpoints;
  private final EventLog<K> log = new EventLog<>();
  private @Nullable Sampler<V> sampler;
  private double time;
  private double least;
  private double timed;
  private double tolerance;
  private double patience = Double.POSITIVE_INFINITY;
  private long evaluations;
  private long budget = Long.MAX_VALUE;
  private @Nullable NodeListener<V> listener;
  private boolean firstLeg;
  private volatile @Nullable Thread user;

  /**
   * Creates a propagator.
   *
   * @param settings what it has to know of its equations
   */
  public FastPropagator(FastSettings<V> settings) {
    this.settings = settings;
    tolerance = settings.tolerance();
    int size = settings.inverseScales().length;
    step = new BogackiShampine<>(settings.inverseScales(), settings.stiff());
    search = new EventSearch<>(step);
    checkpoints = new Checkpoints(size);
  }

  @Override
  public void start(double from, double[] state) {
    user = Thread.currentThread();
    time = from;
    System.arraycopy(state, 0, step.state(), 0, state.length);
    control.start();
    least = state[settings.watched()];
    timed = 0;
    evaluations = 0;
    tolerance = settings.tolerance();
    firstLeg = true;
    log.clear();
    checkpoints.clear();
    checkpoints.add(time, time, step.state(), control, least, timed, 0);
  }

  @Override
  public void restart(double until) {
    user = Thread.currentThread();
    int i = sampler == null && listener == null ? checkpoints.onTheWayTo(until) : 0;
    time = checkpoints.time(i);
    checkpoints.state(i, step.state());
    control.goOn(checkpoints.step(i), checkpoints.steady(i));
    least = checkpoints.least(i);
    timed = checkpoints.timed(i);
    evaluations = checkpoints.evaluations(i);
    tolerance = settings.tolerance();
    firstLeg = true;
    log.clear();
  }

  @Override
  public @Nullable K propagate(Equations<V> equations, double end, List<Event<K, V>> events) {
    return leg(equations, end, events, false);
  }

  @Override
  public @Nullable K propagateShared(Equations<V> equations, double end, List<Event<K, V>> events) {
    return leg(equations, end, events, firstLeg);
  }

  private @Nullable K leg(
      Equations<V> equations, double end, List<Event<K, V>> events, boolean shared) {
    mine();
    if (Double.isNaN(end)) {
      throw new IllegalArgumentException(NO_END);
    }
    firstLeg = false;
    K stop = steps(equations, end, events, shared);
    mine();
    return stop;
  }

  private void mine() {
    if (user != Thread.currentThread()) {
      throw new IllegalStateException(TWO_THREADS);
    }
  }

  private @Nullable K steps(
      Equations<V> equations, double end, List<Event<K, V>> events, boolean shared) {
    boolean keeping = shared;
    int noted = log.size();
    double reach = time;
    V begin = step.begin(equations, time);
    double decay = settings.decay().applyAsDouble(begin);
    search.begin(events, begin);
    if (sampler != null) {
      sampler.begin(time);
    }
    tell(NodeListener.Node.BEGIN, equations);
    while (end - time > SHORTEST_LEG && timed <= patience) {
      double wanted = control.wanted(decay);
      double h = Math.min(wanted, end - time);
      // what follows a step cut short belongs to this leg alone, even if the step is not taken
      keeping &= h == wanted;
      reach = Math.max(reach, time + h);
      double error = attempt(equations, decay, h);
      if (Thread.currentThread().isInterrupted()) {
        throw new CancellationException(INTERRUPTED);
      }
      if (evaluations > budget) {
        throw new UnfinishedLegException(time, evaluations);
      }
      if (control.refuses(h, error)) {
        continue;
      }
      if (Double.isNaN(error)) {
        throw new ArithmeticException(NOT_A_NUMBER + time + " s");
      }
      V view = step.end();
      double nextDecay = settings.decay().applyAsDouble(view);
      boolean holds = settings.timed().test(view);
      if (search.passes(events, view, equations, time, h)) {
        K stop = passed(equations, decay, h, events);
        if (stop != null) {
          return stop;
        }
      }
      sample(equations, h, 1);
      least = Math.min(least, step.valley(settings.watched(), h, 1));
      timed += holds ? h : 0;
      moveOn(h);
      tell(NodeListener.Node.END, equations);
      search.moveOn(events.size());
      decay = nextDecay;
      if (h == wanted) {
        control.taken(h, error);
        keeping &= log.size() == noted;
        if (keeping && time > checkpoints.last()) {
          checkpoints.add(time, reach, step.state(), control, least, timed, evaluations);
        }
      }
    }
    return null;
  }

  /** Tries a step; returns its error over the tolerance. */
  private double attempt(Equations<V> equations, double decay, double h) {
    evaluations += BogackiShampine.EVALUATIONS;
    return step.attempt(equations, time, h, StepControl.excess(decay, h)) / tolerance;
  }

  /** Goes through the events of a step in order of time, up to the first that ends the leg. */
  private @Nullable K passed(
      Equations<V> equations, double decay, double h, List<Event<K, V>> events) {
    double done = 0;
    while (true) {
      int which = search.first(events, equations, time, h);
      if (which < 0) {
        return null;
      }
      Event<K, V> event = events.get(which);
      boolean rising = search.takeRising(which);
      done = Math.max(done, search.place());
      double[] there = step.within(h, done);
      if (!event.happens(rising, equations.at(time + done * h, there))) {
        continue;
      }
      if (!event.stops()) {
        log.add(event.kind(), time + done * h, there);
        continue;
      }
      double cut = done * h;
      if (cut > SHORTEST_LEG) {
        sample(equations, h, done);
        least = Math.min(least, step.valley(settings.watched(), h, done));
        attempt(equations, decay, cut);
        moveOn(cut);
        tell(NodeListener.Node.END, equations);
      }
      note(event.kind());
      return event.kind();
    }
  }

  private void moveOn(double h) {
    time += h;
    step.moveOn();
    least = Math.min(least, step.state()[settings.watched()]);
  }

  /** Takes the samples within the first part s of a step. */
  private void sample(Equations<V> equations, double h, double s) {
    if (sampler == null) {
      return;
    }
    while (sampler.due() <= time + s * h) {
      double part = (sampler.due() - time) / h;
      sampler.take(equations.at(sampler.due(), step.within(h, part)));
    }
  }

  private void tell(NodeListener.Node node, Equations<V> equations) {
    if (listener != null) {
      listener.at(node, equations.at(time, step.state()));
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
    return step.state()[index];
  }

  @Override
  public V at(Equations<V> equations) {
    return equations.at(time, step.state());
  }

  @Override
  public double least() {
    return least;
  }

  /**
   * How long the condition of the settings held since the start.
   *
   * @return the time
   */
  public double timed() {
    return timed;
  }

  /**
   * Says how long the condition of the settings may hold before the propagation is given up.
   *
   * @param longest the time; without end until it is said
   */
  public void patience(double longest) {
    patience = longest;
  }

  @Override
  public void scaleTolerance(double times) {
    if (!(times > 0)) {
      throw new IllegalArgumentException(FastSettings.TOLERANCE + times + " times the usual one");
    }
    tolerance = times * settings.tolerance();
  }

  @Override
  public boolean isGivenUp() {
    return timed > patience;
  }

  @Override
  public EventLog<K> log() {
    return log;
  }

  @Override
  public void note(K kind) {
    log.add(kind, time, step.state());
  }
}
