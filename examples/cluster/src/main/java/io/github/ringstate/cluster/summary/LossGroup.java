package io.github.ringstate.cluster.summary;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was lost at the points of one group.
 *
 * @param craft the name of the craft
 * @param entry the name of the entry
 * @param recovery the name of the recovery
 * @param state the pilot's state; empty unless points are told apart by it
 * @param delayS the delay, s; empty unless points are told apart by it, and for points that could
 *     not be flown
 * @param points how many points
 * @param failed how many of them could not be flown
 * @param withoutOnset how many did not meet the ring state
 * @param arrested how many arrested the descent above the ground
 * @param p50Ft the loss that half of those who met the ring state do not exceed, ft; infinite where
 *     fewer arrested the descent; empty if nobody met it
 * @param p95Ft the same for 95 in 100
 */
public record LossGroup(
    String craft,
    String entry,
    String recovery,
    Optional<String> state,
    OptionalDouble delayS,
    long points,
    long failed,
    long withoutOnset,
    long arrested,
    OptionalDouble p50Ft,
    OptionalDouble p95Ft) {

  private static final int DIGITS = 4;

  /**
   * How many met the ring state.
   *
   * @return the size of the sample of losses
   */
  public long samples() {
    return points - failed - withoutOnset;
  }

  /**
   * The part of those who met the ring state and arrested the descent above the ground.
   *
   * @return the share, 0 to 1, cut off after four decimals, so that only all of them make a whole
   *     one; empty if nobody met the ring state
   */
  public Optional<BigDecimal> arrestedShare() {
    return samples() == 0
        ? Optional.empty()
        : Optional.of(
            BigDecimal.valueOf(arrested)
                .divide(BigDecimal.valueOf(samples()), DIGITS, RoundingMode.DOWN));
  }
}
