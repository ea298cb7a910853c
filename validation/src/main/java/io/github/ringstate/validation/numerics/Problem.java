package io.github.ringstate.validation.numerics;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/**
 * A differential equation with a closed form and an event at a known time.
 *
 * @param name what it is
 * @param start the state at time zero
 * @param end when to stop, s
 * @param rates the right-hand side, which does not depend on time
 * @param solution the closed form
 * @param event what passes through zero; a bounce multiplies the speed, state 1, by -restitution
 * @param restitution speed after contact over speed before it; NaN where the event changes nothing
 * @param times when the event happens before the end, s
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to an integrator
public record Problem(
    String name,
    double[] start,
    double end,
    Rates rates,
    DoubleFunction<double[]> solution,
    ToDoubleFunction<double[]> event,
    double restitution,
    double[] times) {

  /** A right-hand side. */
  @FunctionalInterface
  public interface Rates {
    /**
     * The rates at a state.
     *
     * @param state the state
     * @return its rates
     */
    double[] at(double[] state);
  }
}
