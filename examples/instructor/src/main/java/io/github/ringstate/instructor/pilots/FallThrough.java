package io.github.ringstate.instructor.pilots;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.EventKind;
import io.github.ringstate.encounter.Occurrence;
import io.github.ringstate.encounter.Outcome;

/** Whether a craft left the ring state by falling through it, which is no way out. */
public final class FallThrough {

  private FallThrough() {}

  /**
   * The ring state is behind, and nothing stopped the sink.
   *
   * @param outcome what came of a flight, with all that happened on the way
   * @return true if the craft went through it
   */
  public static boolean is(Outcome outcome) {
    boolean out = false;
    for (Occurrence seen : outcome.occurrences()) {
      out = seen.kind() == EventKind.RING_STATE_LEFT || (out && !isIn(seen.kind()));
    }
    return out && (outcome.ending() == Ending.NOT_ARRESTED || outcome.ending() == Ending.GROUND);
  }

  private static boolean isIn(EventKind kind) {
    return kind == EventKind.ONSET || kind == EventKind.RING_STATE_ENTERED_AGAIN;
  }
}
