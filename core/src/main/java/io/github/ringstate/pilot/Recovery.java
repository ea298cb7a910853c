package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import java.util.List;

/**
 * What a pilot does once the ring state is recognised. This is the interface to write for a
 * technique of one's own.
 *
 * <p>A recovery is flown in phases. Within a phase, {@link #command} is a plain function of what
 * can be known at an instant; it is asked for instants that are tried and thrown away, so it keeps
 * no memory. A phase ends where {@link #phaseEnd} rises through zero; that instant is located
 * exactly, and the next phase begins. How long a pilot takes to recognise is no part of a recovery.
 */
public interface Recovery {

  /**
   * The technique's name.
   *
   * @return one lower-case word, or several with hyphens
   */
  String name();

  /**
   * The names of the phases, in order.
   *
   * @return at least one name; for people
   */
  List<String> phases();

  /**
   * Commands the controls.
   *
   * @param phase the phase that is flown, from 0
   * @param seen what can be known at this instant; not to be kept
   * @param controls where to put the commands; not to be kept
   */
  void command(int phase, Cockpit seen, Controls controls);

  /**
   * The quantity at whose rise through zero the phase ends; not asked in the last phase.
   *
   * @param phase the phase that is flown, from 0
   * @param seen what can be known at this instant; not to be kept
   * @return the quantity, continuous along the flight; any unit
   */
  double phaseEnd(int phase, Cockpit seen);

  /**
   * The phase that follows; asked once, at the instant at which a phase ends.
   *
   * @param phase the phase that ends, from 0
   * @param seen what can be known at this instant; not to be kept
   * @return the number of the next phase, greater than {@code phase}
   */
  default int next(int phase, Cockpit seen) {
    return phase + 1;
  }

  /**
   * How far the pilot is from being held back by a limit; see {@link Limited}.
   *
   * @param phase the phase that is flown, from 0
   * @param seen what can be known at this instant; not to be kept
   * @return positive while no limit binds, negative while one does; continuous within a phase
   */
  default double limitMargin(int phase, Cockpit seen) {
    return 1;
  }
}
