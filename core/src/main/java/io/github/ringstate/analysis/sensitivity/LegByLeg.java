package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.encounter.Happening;
import io.github.ringstate.integrate.Equations;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.EventLog;
import io.github.ringstate.integrate.NodeListener;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.Sampler;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Flies a flight along legs that somebody else integrated, as far as they go; at the first that is
 * missing it breaks off and says what is asked for. Flown again with that leg added, the flight
 * goes through all its decisions as before and reaches the next.
 */
final class LegByLeg {

  private final List<Leg.Flown> legs = new ArrayList<>();
  private int next;

  /** Breaks a flight off where a leg is missing. */
  static final class Missing extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Leg<Happening, Motion> leg;

    Missing(Leg<Happening, Motion> leg) {
      super("a leg is missing", null, false, false);
      this.leg = leg;
    }

    Leg<Happening, Motion> leg() {
      return leg;
    }
  }

  /** Begins the flight anew. */
  void again() {
    next = 0;
  }

  /** Adds the leg that was asked for. */
  void add(Leg.Flown leg) {
    legs.add(leg);
  }

  /** A propagator of the flight; all of one flight go along the same legs. */
  Propagator<Happening, Motion> propagator() {
    return new Along();
  }

  private final class Along implements Propagator<Happening, Motion> {

    private final EventLog<Happening> log = new EventLog<>();
    private Leg.Place first = new Leg.Place(0, new double[0]);
    private Leg.Place now = first;

    @Override
    public void start(double time, double[] state) {
      first = new Leg.Place(time, state.clone());
      restart(time);
    }

    @Override
    public void restart(double until) {
      now = first;
      log.clear();
    }

    @Override
    public @Nullable Happening propagate(
        Equations<Motion> equations, double end, List<Event<Happening, Motion>> events) {
      if (!(end - now.time() > SHORTEST_LEG)) {
        return null;
      }
      if (next == legs.size()) {
        throw new Missing(new Leg<>(equations, now, end, events));
      }
      Leg.Flown leg = legs.get(next++);
      for (Leg.Met met : leg.met()) {
        log.add(events.get(met.event()).kind(), met.where().time(), met.where().state());
      }
      now = leg.end();
      return leg.stop() == Leg.Flown.TIME_OVER ? null : events.get(leg.stop()).kind();
    }

    @Override
    public @Nullable Happening propagateShared(
        Equations<Motion> equations, double end, List<Event<Happening, Motion>> events) {
      return propagate(equations, end, events);
    }

    /** Nobody looks at such a flight. */
    @Override
    public void sample(@Nullable Sampler<Motion> sampler) {}

    @Override
    public void listen(@Nullable NodeListener<Motion> listener) {}

    /** The legs have a budget of their own. */
    @Override
    public void budget(long evaluations) {}

    @Override
    public double time() {
      return now.time();
    }

    @Override
    public double state(int index) {
      return now.state()[index];
    }

    @Override
    public Motion at(Equations<Motion> equations) {
      return equations.at(now.time(), now.state());
    }

    /** The peak of the rate of descent is no part of the loss and is not followed. */
    @Override
    public double least() {
      return Double.NaN;
    }

    @Override
    public EventLog<Happening> log() {
      return log;
    }

    @Override
    public void note(Happening kind) {
      log.add(kind, now.time(), now.state());
    }
  }
}
