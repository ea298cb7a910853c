package io.github.ringstate.instructor.pilots;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.study.LossSpread;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Losses that nobody flew. */
public final class MadeUp {

  private MadeUp() {}

  /**
   * Losses of some pilots.
   *
   * @param feet the loss of each, ft; negative if the descent was not arrested, NaN if the ring
   *     state was not met
   * @return their spread
   */
  public static LossSpread losses(double... feet) {
    return LossSpread.of(Arrays.stream(feet).mapToObj(MadeUp::outcome).toList());
  }

  private static Outcome outcome(double feet) {
    if (Double.isNaN(feet)) {
      return Outcome.NO_ONSET;
    }
    OptionalDouble none = OptionalDouble.empty();
    boolean arrested = feet >= 0;
    return new Outcome(
        arrested ? Ending.ARRESTED : Ending.NOT_ARRESTED,
        arrested ? OptionalDouble.of(feet * 0.3048) : none,
        none,
        none,
        none,
        none,
        none,
        List.of());
  }
}
