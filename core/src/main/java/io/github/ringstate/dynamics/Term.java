package io.github.ringstate.dynamics;

/**
 * One part of the equations of motion. It reads the motion at an instant and what the terms before
 * it left there, leaves what it works out in the {@link Loads}, and adds to the rates of the state.
 */
interface Term {

  /**
   * Adds this term.
   *
   * @param at the motion; its state, wind and axes are known
   * @param rates the rates of the state, in the order of {@link State}; zero where no term before
   *     has added anything
   */
  void add(Motion at, double[] rates);
}
