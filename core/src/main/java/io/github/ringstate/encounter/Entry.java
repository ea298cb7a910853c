package io.github.ringstate.encounter;

import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.quantity.ParameterSet;

/**
 * How a flight comes to the ring state: where it starts, in which wind, and what is done until
 * then.
 */
public interface Entry {

  /**
   * The entry's name.
   *
   * @return one lower-case word, or several with hyphens
   */
  String name();

  /**
   * The wind of the entry, unless the encounter has {@linkplain Encounter#withWind one of its own}.
   * The craft heads north. Heights that the wind is asked for count from the ground throughout;
   * where an encounter has no ground, onset counts as at 300 ft.
   *
   * @return the wind over the ground
   */
  WindField wind();

  /**
   * The rate of descent that the pilot means to have; more is a surprise.
   *
   * @return the rate, m/s, positive; zero unless an entry says otherwise
   */
  default double intendedDescent() {
    return 0;
  }

  /**
   * The numbers that the entry was made of, to be read back.
   *
   * @return the numbers; none unless the entry says otherwise
   */
  default ParameterSet numbers() {
    return ParameterSet.NONE;
  }

  /**
   * Where the flight starts and what is done with the controls until the pilot acts. Where the wind
   * varies with height it is asked for once for each start that is tried, and gives the same for
   * the same equations.
   *
   * @param motion the equations of motion, away from the ground, in the wind of the encounter,
   *     whose heights count from the start here: {@link EquationsOfMotion#windAtStart} is the wind
   *     to trim in
   * @return the start, at height zero
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if the craft has no steady flight
   *     to start from
   */
  Start start(EquationsOfMotion motion);

  /**
   * The start of a flight.
   *
   * @param state the state, in the order of {@link io.github.ringstate.dynamics.State}, SI units
   * @param law what is done with the controls until the pilot acts
   */
  @SuppressWarnings("ArrayRecordComponent") // goes straight to an integrator
  record Start(double[] state, ControlLaw law) {}
}
