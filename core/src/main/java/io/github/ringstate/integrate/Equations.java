package io.github.ringstate.integrate;

/**
 * Ordinary differential equations dy/dt = f(t, y), for the user to write.
 *
 * <p>Besides rates they give a view of an instant: whatever events and samples look at. It may be
 * one object that is used again for every instant, and may put off all work until it is asked.
 *
 * @param <V> the view of an instant
 */
public interface Equations<V> {

  /**
   * The number of quantities in the state.
   *
   * @return the length of the arrays below
   */
  int dimension();

  /**
   * Works out the rates at an instant.
   *
   * @param time the time
   * @param state the state; part of the view until the next call, and not changed before
   * @param rates where the rates of the state are written; part of the view likewise
   * @return the view of this instant, valid until the next call
   */
  V rates(double time, double[] state, double[] rates);

  /**
   * Goes to an instant whose rates nobody may want.
   *
   * @param time the time
   * @param state the state; part of the view until the next call, and not changed before
   * @return the view of this instant, valid until the next call
   */
  V at(double time, double[] state);
}
