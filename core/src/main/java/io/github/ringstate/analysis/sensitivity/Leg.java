package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.integrate.Equations;
import io.github.ringstate.integrate.Event;
import java.util.List;

/**
 * A leg that a flight asks for.
 *
 * @param equations its equations, with what the pilot commands on it
 * @param begin where it begins
 * @param end when it ends at the latest, s
 * @param events what is looked for on it
 * @param <K> what names events
 * @param <V> the view of an instant
 */
record Leg<K, V>(Equations<V> equations, Place begin, double end, List<Event<K, V>> events) {

  /**
   * An instant of a flight.
   *
   * @param time when, s
   * @param state the state, in the order of the equations
   */
  @SuppressWarnings("ArrayRecordComponent") // goes straight to an integrator
  record Place(double time, double[] state) {}

  /** The quantity at whose passage through zero an event happens, at an instant. */
  double value(int event, double time, double[] state) {
    return events.get(event).value().applyAsDouble(equations.at(time, state));
  }

  /**
   * An event that was met.
   *
   * @param event its number in the list of what is looked for
   * @param where where it happened
   */
  record Met(int event, Place where) {}

  /**
   * How a leg was flown.
   *
   * @param met what happened on the way, in order, what ended it included
   * @param stop the number of the event that ended it; {@link #TIME_OVER} if its time ran out
   * @param end where it ended
   */
  record Flown(List<Met> met, int stop, Place end) {

    /** In place of an event: the leg took all of its time. */
    static final int TIME_OVER = -1;
  }
}
