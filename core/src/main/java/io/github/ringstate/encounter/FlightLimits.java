package io.github.ringstate.encounter;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * How long a flight may take.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record FlightLimits(ParameterSet numbers) {

  /** Time in which onset is looked for. Default 60 s, range 1 to 600 s. */
  public static final Parameter ENTRY_TIME =
      Parameter.of("entry time", Unit.SECOND, 1, 600, 60, "definition");

  /**
   * Time that a recovery may take, and that a cue may take to come. Default 60 s, range 1 to 600 s.
   */
  public static final Parameter RECOVERY_TIME =
      Parameter.of("recovery time", Unit.SECOND, 1, 600, 60, "definition");

  /**
   * Time that a flight goes on past an arrest that lasts; what happens then is noted and changes
   * nothing of how the flight ended. Default 0 s, range 0 to 600 s.
   */
  public static final Parameter TIME_PAST_ARREST =
      Parameter.of("time past arrest", Unit.SECOND, 0, 600, 0, "off unless set");

  /**
   * How often the equations of motion may be worked out for a flight, until onset and again from
   * there on, before it is given up; a number and not a time, so that results do not depend on the
   * machine. Default 1000000, range 1000 to 1000000000 (a pure number).
   */
  public static final Parameter EVALUATIONS =
      Parameter.of(
          "evaluations of a flight",
          Unit.ONE,
          1000,
          1e9,
          1e6,
          "assumed: tens of times what the built-in parts take, a second or two of work");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS =
      List.of(ENTRY_TIME, RECOVERY_TIME, TIME_PAST_ARREST, EVALUATIONS);

  /** The standard value of each. */
  public static final FlightLimits STANDARD = new FlightLimits(ParameterSet.standard(PARAMETERS));

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public FlightLimits {
    numbers = numbers.only(PARAMETERS);
  }

  /**
   * The same limits with one changed.
   *
   * @param parameter one of {@link #PARAMETERS}
   * @param value its value, in its own unit
   * @return the changed limits
   */
  public FlightLimits with(Parameter parameter, double value) {
    return new FlightLimits(numbers.with(parameter, value));
  }

  double si(Parameter parameter) {
    return numbers.si(parameter);
  }

  /** The budget of evaluations. */
  long evaluations() {
    return (long) numbers.get(EVALUATIONS);
  }

  /** Every number with its unit. */
  @Override
  public String toString() {
    return numbers.toString();
  }
}
