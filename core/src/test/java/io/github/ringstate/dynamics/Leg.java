package io.github.ringstate.dynamics;

import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.EventLog;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.Sampler;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A part of a flight, for tests. */
@SuppressWarnings("ArrayRecordComponent") // a state is an array
public record Leg(double time, double[] state, Optional<String> stop, EventLog<String> log) {

  public static Leg fly(EquationsOfMotion equations, double start, double[] state, double end) {
    return fly(Propagators.precise(), equations, start, state, end, List.of());
  }

  public static Leg fly(
      Propagator<String, Motion> propagator,
      EquationsOfMotion equations,
      double start,
      double[] state,
      double end,
      List<Event<String, Motion>> events) {
    propagator.start(start, state);
    Optional<String> stop = Optional.ofNullable(propagator.propagate(equations, end, events));
    double[] reached = new double[State.SIZE];
    for (int i = 0; i < reached.length; i++) {
      reached[i] = propagator.state(i);
    }
    return new Leg(propagator.time(), reached, stop, propagator.log());
  }

  static Leg sampled(
      EquationsOfMotion equations,
      double start,
      double[] state,
      double end,
      double step,
      Consumer<Motion> sink) {
    Propagator<String, Motion> propagator = Propagators.precise();
    propagator.sample(new Sampler<>(step, sink));
    return fly(propagator, equations, start, state, end, List.of());
  }
}
