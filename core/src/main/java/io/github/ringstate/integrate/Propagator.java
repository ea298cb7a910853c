package io.github.ringstate.integrate;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Carries a state on in time, leg by leg: each leg has its equations, and ends at a time or at an
 * event. One thread uses it at a time; where two meet on one, it fails.
 *
 * @param <K> what names events
 * @param <V> the view of an instant
 */
public interface Propagator<K, V> {

  /** Part of the message when two threads use one propagator. */
  String TWO_THREADS = "a propagator was used by two threads at once";

  /** Part of the message when equations give what is not a number; the time stands behind it. */
  String NOT_A_NUMBER = "the rates are not numbers at a time of ";

  /** Part of the message when the end of a leg is not a number. */
  String NO_END = "the end of a leg is not a number";

  /** Message when the thread is interrupted. */
  String INTERRUPTED = "the propagation was interrupted";

  /** A leg that would be shorter is not propagated: its ends cannot be told apart. */
  double SHORTEST_LEG = 1e-9;

  /**
   * Starts anew.
   *
   * @param time when
   * @param state the state then; copied
   */
  void start(double time, double[] state);

  /**
   * Goes back to the start, or to where a shared leg was at an instant not after {@code until}:
   * propagated on from there by {@link #propagateShared}, it is the same to the last bit as if it
   * had come from the start.
   *
   * @param until how far the first leg will lead again
   */
  void restart(double until);

  /**
   * Propagates one leg.
   *
   * @param equations the equations
   * @param end when the leg ends at the latest
   * @param events what to look for
   * @return the event that ended the leg, or null if its time ran out
   * @throws ArithmeticException if the equations give what is not a number
   * @throws UnfinishedLegException if the budget of evaluations is used up, or steps became too
   *     short
   * @throws java.util.concurrent.CancellationException if the thread is interrupted, which it stays
   * @throws IllegalStateException if another thread used this propagator meanwhile
   */
  @Nullable K propagate(Equations<V> equations, double end, List<Event<K, V>> events);

  /**
   * Propagates the first leg, which has the same equations and commands whenever it is propagated
   * after this start, so that it need not be propagated as a whole again; see {@link #restart}.
   * Otherwise like {@link #propagate}.
   *
   * @param equations the equations
   * @param end when the leg ends at the latest
   * @param events what to look for
   * @return the event that ended the leg, or null if its time ran out
   */
  @Nullable K propagateShared(Equations<V> equations, double end, List<Event<K, V>> events);

  /**
   * Takes samples of all legs that follow.
   *
   * @param sampler what takes them, or null for none
   */
  void sample(@Nullable Sampler<V> sampler);

  /**
   * Says to whom the instants of all legs that follow are told.
   *
   * @param listener hears of them, or null for nobody
   */
  void listen(@Nullable NodeListener<V> listener);

  /**
   * Says how often rates may be worked out from a start on; unlimited until it is said.
   *
   * @param evaluations the greatest number of evaluations, positive
   */
  void budget(long evaluations);

  /**
   * Lets steps have greater or smaller errors from here on, up to the next start or restart:
   * greater where only the rough course matters, smaller where errors would add up. A propagator
   * may pass over it.
   *
   * @param times how many times as great as usual, positive
   * @throws IllegalArgumentException if it is not positive
   */
  default void scaleTolerance(double times) {}

  /**
   * Whether the propagation was given up, so that every leg ends where it is.
   *
   * @return false unless the propagator was told when to give up
   */
  default boolean isGivenUp() {
    return false;
  }

  /**
   * Where the propagation is in time.
   *
   * @return the time
   */
  double time();

  /**
   * One quantity of the state where the propagation is.
   *
   * @param index its place
   * @return its value
   */
  double state(int index);

  /**
   * The view of equations where the propagation is.
   *
   * @param equations the equations
   * @return the view, valid until their next use
   */
  V at(Equations<V> equations);

  /**
   * The least value since the start of the quantity that is watched.
   *
   * @return the value
   */
  double least();

  /**
   * What happened since the start.
   *
   * @return the events noted, in order
   */
  EventLog<K> log();

  /**
   * Notes an event where the propagation is.
   *
   * @param kind what happened
   */
  void note(K kind);
}
