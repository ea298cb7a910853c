package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/** Nothing: the attitude of the hover, the collective left where it is. */
public final class NoRecovery extends ByNumbers {

  /** How fast the attitude of the hover is restored. Default 10 deg/s, range 2 to 30 deg/s. */
  public static final Parameter RATE =
      Parameter.of("attitude rate", Unit.DEGREE_PER_SECOND, 2, 30, 10, "assumed");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS = List.of(RATE, Drift.GAIN, Drift.MAXIMUM);

  /**
   * Creates it.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public NoRecovery(ParameterSet numbers) {
    super("none", numbers.only(PARAMETERS), NoRecovery::phases);
  }

  /** Creates it with the standard value of each parameter. */
  public NoRecovery() {
    this(ParameterSet.standard(PARAMETERS));
  }

  private static List<Phase> phases(ParameterSet numbers) {
    Drift drift = Drift.of(numbers);
    Hands hands = Hands.together(numbers.si(RATE), numbers.si(RATE));
    return List.of(
        Phase.last(
            "nothing",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch(),
                    drift.bank(seen, seen.hoverBank()),
                    seen.collective(),
                    seen,
                    controls)));
  }
}
