package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * The collective lever raised by so many degrees and left there, whatever the rotor does, the
 * attitude left as it is. Where that asks for more power than there is, the rotor slows. Not a way
 * out of the ring state.
 */
public final class CollectiveRaised extends ByNumbers {

  /**
   * How far the collective goes above the one that was held at recognition. Default 4 deg, range
   * 0.5 to 12 deg.
   */
  public static final Parameter COLLECTIVE_RAISED =
      Parameter.of(
          "collective raised",
          Unit.DEGREE,
          0.5,
          12,
          4,
          "assumed: in most craft more than the engine can keep the rotor turning with");

  /** How fast the collective moves. Default 6 deg/s, range 1 to 20 deg/s. */
  public static final Parameter COLLECTIVE_RATE =
      Parameter.of("collective rate", Unit.DEGREE_PER_SECOND, 1, 20, 6, "assumed");

  /** How fast the attitude of the hover is restored. Default 12 deg/s, range 2 to 30 deg/s. */
  public static final Parameter RATE =
      Parameter.of("attitude rate", Unit.DEGREE_PER_SECOND, 2, 30, 12, "assumed");

  /** All parameters of the technique. */
  public static final List<Parameter> PARAMETERS =
      List.of(COLLECTIVE_RAISED, COLLECTIVE_RATE, RATE, Drift.GAIN, Drift.MAXIMUM);

  /**
   * Creates the technique.
   *
   * @param numbers a value for each of {@link #PARAMETERS}
   */
  public CollectiveRaised(ParameterSet numbers) {
    super("collective-raised", numbers.only(PARAMETERS), CollectiveRaised::phases);
  }

  /** Creates the technique with the standard value of each parameter. */
  public CollectiveRaised() {
    this(ParameterSet.standard(PARAMETERS));
  }

  private static List<Phase> phases(ParameterSet numbers) {
    double raised = numbers.si(COLLECTIVE_RAISED);
    Drift drift = Drift.of(numbers);
    Hands hands = Hands.together(numbers.si(RATE), numbers.si(COLLECTIVE_RATE));
    return List.of(
        Phase.last(
            "lever raised",
            (seen, controls) ->
                hands.move(
                    seen.hoverPitch(),
                    drift.bank(seen, seen.hoverBank()),
                    seen.heldCollective() + raised,
                    seen,
                    controls)));
  }
}
