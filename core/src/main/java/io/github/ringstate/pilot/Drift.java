package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.SoftLimit;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Keeping a craft from drifting off to the side. A change of power changes the push of the tail
 * rotor; nobody lets a craft slide away for that, so whoever holds the wings level in the words of
 * a technique leans a little against the drift.
 *
 * @param gain bank against drift, rad per m/s
 * @param greatest greatest bank against drift, rad
 */
public record Drift(double gain, double greatest) {

  /** Bank against drift. Default 0.05 rad s/m, range 0 to 0.2 rad s/m. */
  public static final Parameter GAIN =
      Parameter.of(
          "drift gain",
          Unit.RADIAN_SECOND_PER_METRE,
          0,
          0.2,
          0.05,
          "assumed: about 1.5 degrees for a knot");

  /** Maximum bank against drift. Default 0.15 rad, range 0.01 to 0.5 rad. */
  public static final Parameter MAXIMUM =
      Parameter.of("maximum drift bank", Unit.RADIAN, 0.01, 0.5, 0.15, "assumed");

  /** Both parameters. */
  public static final List<Parameter> PARAMETERS = List.of(GAIN, MAXIMUM);

  /**
   * The habit that the numbers of a technique or an entry describe.
   *
   * @param numbers values for at least {@link #PARAMETERS}
   * @return the habit
   */
  public static Drift of(ParameterSet numbers) {
    return new Drift(numbers.si(GAIN), numbers.si(MAXIMUM));
  }

  /**
   * The bank that holds a craft over its track.
   *
   * @param seen what can be known
   * @param datum the bank in steady flight without drift, rad, positive to the right
   * @return the bank to command, rad
   */
  public double bank(Cockpit seen, double datum) {
    return datum - SoftLimit.within(gain * seen.sidewaysGroundSpeed(), greatest);
  }
}
