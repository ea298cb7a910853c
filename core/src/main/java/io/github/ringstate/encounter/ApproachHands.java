package io.github.ringstate.encounter;

import io.github.ringstate.pilot.Drift;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.Stream;

/**
 * How a pilot moves the controls in the entries from forward flight.
 *
 * @param rate how fast nose, bank and collective move, rad/s
 * @param softness excess of speed at which most of the attitude is used, m/s
 * @param drift how the pilot leans against drift
 */
public record ApproachHands(double rate, double softness, Drift drift) {

  /** How fast nose, bank and collective move. Default 6 deg/s, range 1 to 30 deg/s. */
  public static final Parameter RATE =
      Parameter.of("control rate", Unit.DEGREE_PER_SECOND, 1, 30, 6, "assumed");

  /** Excess of speed at which most of the attitude is used. Default 5 kt, range 1 to 30 kt. */
  public static final Parameter SOFTNESS =
      Parameter.of("speed softness", Unit.KNOT, 1, 30, 5, "assumed");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS =
      List.of(RATE, SOFTNESS, Drift.GAIN, Drift.MAXIMUM);

  /** All parameters of an entry: its own and those of the hands, in this order. */
  static List<Parameter> after(Parameter... own) {
    return Stream.concat(Stream.of(own), PARAMETERS.stream()).toList();
  }

  /**
   * The hands that the numbers of an entry describe.
   *
   * @param numbers values for at least {@link #PARAMETERS}
   * @return the hands
   */
  public static ApproachHands of(ParameterSet numbers) {
    return new ApproachHands(numbers.si(RATE), numbers.si(SOFTNESS), Drift.of(numbers));
  }
}
