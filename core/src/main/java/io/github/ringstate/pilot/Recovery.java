package io.github.ringstate.pilot;

import io.github.ringstate.flight.Cockpit;
import io.github.ringstate.flight.ControlLaw;
import java.util.List;

/**
 * What a pilot does once the ring state is recognised. This is the interface to write for a
 * technique of one's own.
 *
 * <p>A recovery is flown in phases. Within a phase, {@link #command} is a plain function of what
 * can be known at an instant; it is asked for instants that are tried and thrown away, so it keeps
 * no memory. A phase ends where {@link #phaseEnd} rises through zero; that instant is located
 * exactly, and {@link Cockpit#phase} is one greater from then on. How long a pilot takes to
 * recognise is no part of a recovery.
 */
public interface Recovery extends ControlLaw {

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
   * The quantity at whose rise through zero the present phase ends; not asked in the last phase.
   *
   * @param seen what can be known at this instant; not to be kept
   * @return the quantity, continuous along the flight; any unit
   */
  double phaseEnd(Cockpit seen);
}
