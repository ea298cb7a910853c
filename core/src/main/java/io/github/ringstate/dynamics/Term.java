package io.github.ringstate.dynamics;

/**
 * One part of the equations of motion. It reads the motion at an instant and what the terms before
 * it left there, leaves what it works out in the {@link Loads}, and sets the rates of the
 * quantities of the state that are its own.
 */
interface Term {

  /**
   * Adds this term.
   *
   * @param at the motion; its state, wind and axes are known
   * @param rates the rates of the state, in the order of {@link State}; those of the terms before
   *     it are set
   */
  void add(Motion at, double[] rates);
}
