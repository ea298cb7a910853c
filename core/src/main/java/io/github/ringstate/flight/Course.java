package io.github.ringstate.flight;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A flight in progress: where it is, and what was noted on the way. It is started from a state and
 * flown on leg by leg.
 */
public interface Course {

  /**
   * Starts anew.
   *
   * @param time when, s
   * @param state the state then, in the order of {@link State}, SI units; copied
   * @param law what is done with the controls on legs that may be kept
   */
  void start(double time, double[] state, ControlLaw law);

  /**
   * Goes back to the start. If a first leg with the law of the start was flown before and kept, the
   * course may go to where that leg was at an instant not after {@code until}: flown on with the
   * same law, it is the same to the last bit as if it had been flown from the start.
   *
   * @param until how far the first leg will lead again, s
   */
  void again(double until);

  /**
   * Flies one leg.
   *
   * @param motion the equations of motion
   * @param law what is done with the controls
   * @param end when the leg ends at the latest, s
   * @param events what to look for
   * @return the event that ended the leg, or null if its time ran out
   */
  @Nullable EventKind fly(
      EquationsOfMotion motion, ControlLaw law, double end, List<FlightEvent> events);

  /**
   * Where the flight is in time.
   *
   * @return the time, s
   */
  double time();

  /**
   * One quantity of the state.
   *
   * @param index a place named in {@link State}
   * @return its value, in SI units
   */
  double state(int index);

  /**
   * The greatest rate of descent since the start.
   *
   * @return the rate, m/s, positive down; 0 if the flight never went down
   */
  double fastestDescent();

  /**
   * The motion where the flight is.
   *
   * @param motion the equations of motion
   * @param law what is done with the controls
   * @return the motion, valid until the next call
   */
  Motion at(EquationsOfMotion motion, ControlLaw law);

  /**
   * What happened so far.
   *
   * @return the events noted, in order
   */
  Occurrences occurrences();
}
