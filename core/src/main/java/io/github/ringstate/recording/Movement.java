package io.github.ringstate.recording;

import io.github.ringstate.pilot.Technique;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * The pilot's first movement as attitude and controls show it.
 *
 * @param channel what moved first
 * @param time when it began, s
 * @param pitch change of the nose within the time looked at, rad, positive up; NaN if not recorded
 * @param bank the same of the bank, rad, positive to the right
 * @param collective the same of the lever, as a share of its travel
 */
public record Movement(
    Channel channel, Estimate time, double pitch, double bank, double collective) {

  /** A bank this great is a recovery to the side (assumed), rad. */
  private static final double BANKED = FastMath.toRadians(8);

  /** The nose this far down is a recovery ahead (assumed), rad. */
  private static final double NOSE_DOWN = FastMath.toRadians(-5);

  /** The lever lowered by this share of its travel is an autorotation (assumed). */
  private static final double LOWERED = -0.3;

  /** The lever raised by this share of its travel, and nothing else, is power alone (assumed). */
  private static final double RAISED = 0.115;

  /**
   * The technique that the movement looks like.
   *
   * @return the technique; empty if it looks like none, or too little is recorded
   */
  public Optional<Technique> technique() {
    if (FastMath.abs(bank) >= BANKED) {
      return Optional.of(Technique.LATERAL);
    }
    if (collective <= LOWERED) {
      return Optional.of(Technique.AUTOROTATION);
    }
    if (pitch <= NOSE_DOWN) {
      return Optional.of(Technique.FORWARD);
    }
    return collective >= RAISED ? Optional.of(Technique.COLLECTIVE) : Optional.empty();
  }
}
