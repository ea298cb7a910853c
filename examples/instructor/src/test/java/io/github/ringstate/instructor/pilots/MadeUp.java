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
    Ending[] endings = new Ending[feet.length];
    for (int i = 0; i < feet.length; i++) {
      endings[i] =
          Double.isNaN(feet[i])
              ? Ending.NO_ONSET
              : feet[i] < 0 ? Ending.NOT_ARRESTED : Ending.ARRESTED;
    }
    return LossSpread.of(endings, Arrays.stream(feet).map(loss -> loss * 0.3048).toArray());
  }
}
