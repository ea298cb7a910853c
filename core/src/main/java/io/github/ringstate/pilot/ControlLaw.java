package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;

/**
 * What is done with the controls, as a function of what can be known at that instant.
 *
 * <p>The law is asked many times for instants that are tried and thrown away while a step is worked
 * out. It must therefore depend on nothing but {@code seen}: no clock, no memory, no chance of its
 * own. Whatever needs memory is a phase (the pilot's recovery declares phases, and their ends are
 * located exactly).
 */
@FunctionalInterface
public interface ControlLaw {

  /**
   * Commands the controls.
   *
   * @param seen what can be known at this instant; not to be kept
   * @param controls where to put the commands; not to be kept
   */
  void command(Cockpit seen, Controls controls);
}
