package io.github.ringstate.recording;

import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * A descent into the ring state, or to its edge, as a recording shows it.
 *
 * @param descentTime when the vertical speed was last zero or above before, s; the start of the
 *     recording if it never was
 * @param onsetTime when the boundary was crossed, s; for lack of power alone, when the descent
 *     passed 300 ft/min with all the power there is
 * @param onsetHeight the height then, m
 * @param sinkTime when the sink began to build, s; empty if it never did
 * @param movement the pilot's first movement; empty if neither attitude nor control is recorded or
 *     none is seen
 * @param arrestTime when the vertical speed came back to zero, s; empty if the recording does not
 *     show it
 * @param altitudeLoss height at the onset less the lowest height up to the arrest, m
 * @param peakDescent the fastest rate of descent up to the arrest, m/s, positive
 * @param verdict what it was
 */
public record FoundEncounter(
    double descentTime,
    Estimate onsetTime,
    double onsetHeight,
    Optional<Estimate> sinkTime,
    Optional<Movement> movement,
    Optional<Estimate> arrestTime,
    Estimate altitudeLoss,
    Estimate peakDescent,
    Verdict verdict) {

  /**
   * The delay of the pilot.
   *
   * @return from the onset to the first movement, s, negative if the pilot moved before; empty if
   *     no movement is seen
   */
  public Optional<Estimate> delay() {
    return movement.map(
        moved ->
            new Estimate(
                moved.time().value() - onsetTime.value(),
                FastMath.hypot(moved.time().deviation(), onsetTime.deviation())));
  }
}
