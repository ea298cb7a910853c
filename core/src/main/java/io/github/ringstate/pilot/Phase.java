package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * A part of a {@link Recovery} in which the pilot follows one rule: a name, a command and an end.
 *
 * <p>Within a phase the command is a plain function of what can be known at an instant. It is asked
 * for instants that are tried and thrown away, so a phase keeps no memory: what is to be remembered
 * is in which phase the pilot is, and what the {@link Cockpit} shows of times and of the moment of
 * recognition. The instant at which {@link #end} rises through zero is located exactly.
 */
public interface Phase {

  /**
   * The phase's name.
   *
   * @return a few lower-case words; for people
   */
  String name();

  /**
   * Commands the controls.
   *
   * <p>The contract, which holds for {@link #end} and {@link #limitMargin} as well:
   *
   * <ul>
   *   <li>Continuity: the command is a continuous function of what is seen. A jump is met in steps
   *       ever shorter; a law that jumps for ever uses up the flight's budget of evaluations and
   *       ends in an {@code UnfinishedFlightException}. {@link Switching} makes a switch smooth, or
   *       an event.
   *   <li>Clock: no clock but those of the cockpit: time since recognition, since the technique and
   *       since the phase began, in seconds of the flight. They go back and forth while a step is
   *       worked out.
   *   <li>Chance and state: none. The same cockpit gives the same command, however often and in
   *       whatever order it is asked, from any thread. What is random is drawn beforehand, as
   *       {@link Pilots} do.
   *   <li>Numbers: finite, angles in radians. Anything else is refused with the name of phase and
   *       recovery.
   * </ul>
   *
   * @param seen what can be known at this instant; not to be kept
   * @param controls where to put the commands; not to be kept
   */
  void command(Cockpit seen, Controls controls);

  /**
   * Whether the phase has an end of its own. One that has none is flown until the descent is over.
   *
   * @return false for the last phase of a recovery
   */
  default boolean ends() {
    return true;
  }

  /**
   * The quantity at whose rise through zero the phase ends; not asked where {@link #ends} is false.
   *
   * @param seen what can be known at this instant; not to be kept
   * @return the quantity, continuous along the flight; any unit
   */
  double end(Cockpit seen);

  /**
   * What is flown instead of the phases that are left; asked once, at the instant at which the
   * phase ends. A recovery that is composed of others goes from one to the next by it.
   *
   * @param seen what can be known at this instant; not to be kept
   * @return the phases to fly from here on; empty to go on with the next one
   */
  default List<Phase> instead(Cockpit seen) {
    return List.of();
  }

  /**
   * How far the pilot is from being held back by a limit; see {@link Limited}.
   *
   * @param seen what can be known at this instant; not to be kept
   * @return positive while no limit binds, negative while one does; continuous within a phase
   */
  default double limitMargin(Cockpit seen) {
    return 1;
  }

  /**
   * A phase that ends.
   *
   * @param name its name
   * @param command what is done
   * @param end the quantity at whose rise through zero it ends
   * @return the phase
   */
  static Phase of(String name, ControlLaw command, ToDoubleFunction<Cockpit> end) {
    return of(name, command, true, end);
  }

  /**
   * The last phase of a recovery.
   *
   * @param name its name
   * @param command what is done until the descent is over
   * @return the phase
   */
  static Phase last(String name, ControlLaw command) {
    return of(name, command, false, seen -> -1);
  }

  private static Phase of(
      String name, ControlLaw law, boolean ends, ToDoubleFunction<Cockpit> until) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(law, "command");
    Objects.requireNonNull(until, "end");
    return new Phase() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public void command(Cockpit seen, Controls controls) {
        law.command(seen, controls);
      }

      @Override
      public boolean ends() {
        return ends;
      }

      @Override
      public double end(Cockpit seen) {
        return until.applyAsDouble(seen);
      }
    };
  }
}
