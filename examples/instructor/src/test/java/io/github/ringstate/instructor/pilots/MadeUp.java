package io.github.ringstate.instructor.pilots;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.study.LossSpread;
import java.util.Arrays;

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
    Ending[] endings = Arrays.stream(feet).mapToObj(MadeUp::ending).toArray(Ending[]::new);
    return LossSpread.of(endings, Arrays.stream(feet).map(loss -> loss * 0.3048).toArray());
  }

  private static Ending ending(double feet) {
    if (Double.isNaN(feet)) {
      return Ending.NO_ONSET;
    }
    return feet >= 0 ? Ending.ARRESTED : Ending.NOT_ARRESTED;
  }
}
