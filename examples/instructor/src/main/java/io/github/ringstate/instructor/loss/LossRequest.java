package io.github.ringstate.instructor.loss;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.option.RecoveryKind;
import java.util.List;

/**
 * What a loss table is asked for.
 *
 * @param loaded the craft at each mass
 * @param airs the airs
 * @param approach how the flight comes to the ring state
 * @param recoveries the recoveries, one column each
 * @param delays the delays, s, one line each
 */
record LossRequest(
    List<Helicopter> loaded,
    List<Air> airs,
    Approach approach,
    List<RecoveryKind> recoveries,
    List<Double> delays) {

  LossRequest {
    loaded = List.copyOf(loaded);
    airs = List.copyOf(airs);
    recoveries = List.copyOf(recoveries);
    delays = List.copyOf(delays);
  }
}
