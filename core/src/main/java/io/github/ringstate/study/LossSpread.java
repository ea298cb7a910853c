package io.github.ringstate.study;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import java.util.Arrays;
import java.util.List;

/**
 * The altitude losses of many pilots. A pilot whose descent was not arrested above the ground
 * counts with an infinite loss, never as nothing; one who did not meet the ring state counts among
 * {@link #withoutOnset} only.
 */
public final class LossSpread {

  private final double[] sorted;
  private final int withoutOnset;

  private LossSpread(double[] sorted, int withoutOnset) {
    this.sorted = sorted;
    this.withoutOnset = withoutOnset;
  }

  /**
   * Collects outcomes.
   *
   * @param outcomes what came of each pilot's encounter
   * @return their spread
   */
  public static LossSpread of(List<Outcome> outcomes) {
    return ofLosses(outcomes.stream().mapToDouble(LossSpread::loss).toArray());
  }

  /** Collects losses as {@link #loss} gives them. */
  static LossSpread ofLosses(double[] losses) {
    double[] met = Arrays.stream(losses).filter(loss -> !Double.isNaN(loss)).sorted().toArray();
    return new LossSpread(met, losses.length - met.length);
  }

  /**
   * What an encounter counts for.
   *
   * @param outcome what came of it
   * @return the altitude loss, m; infinite if the descent was not arrested above the ground, NaN if
   *     the ring state was not met
   */
  static double loss(Outcome outcome) {
    return loss(outcome.ending(), outcome.altitudeLoss().orElse(Double.NaN));
  }

  static double loss(Ending ending, double altitudeLoss) {
    return switch (ending) {
      case ARRESTED -> altitudeLoss;
      case GROUND, NOT_ARRESTED -> Double.POSITIVE_INFINITY;
      case NO_ONSET -> Double.NaN;
    };
  }

  /**
   * Puts the pilots of several spreads together.
   *
   * @param spreads the spreads
   * @return the spread of all their pilots
   */
  public static LossSpread pooled(List<LossSpread> spreads) {
    return new LossSpread(
        spreads.stream().flatMapToDouble(spread -> Arrays.stream(spread.sorted)).sorted().toArray(),
        spreads.stream().mapToInt(LossSpread::withoutOnset).sum());
  }

  /**
   * How many pilots met the ring state.
   *
   * @return the size of the sample
   */
  public int samples() {
    return sorted.length;
  }

  /**
   * How many pilots did not meet it.
   *
   * @return their number, not counted in {@link #samples}
   */
  public int withoutOnset() {
    return withoutOnset;
  }

  /**
   * The part of those who met the ring state and arrested the descent above the ground.
   *
   * @return the share, 0 to 1; NaN if nobody met it
   */
  public double arrestedShare() {
    return 1 - shareLosing(Double.POSITIVE_INFINITY);
  }

  /**
   * The part of those who met the ring state and lost at least a height.
   *
   * @param height the height, m
   * @return the share, 0 to 1; NaN if nobody met it
   */
  public double shareLosing(double height) {
    return (double) losing(height) / sorted.length;
  }

  /**
   * The part of those who met the ring state and lost at least a height, with its confidence
   * interval: who would have reached the ground from that height above it.
   *
   * @param height the height, m
   * @param confidence how sure the interval is, between 0 and 1
   * @return the share
   * @throws IllegalArgumentException if nobody met the ring state
   */
  public Share shareLosing(double height, double confidence) {
    return Share.of(losing(height), sorted.length, confidence);
  }

  private int losing(double height) {
    return (int) Arrays.stream(sorted).filter(loss -> loss >= height).count();
  }

  /**
   * The loss that a part of the pilots does not exceed.
   *
   * @param share the part, between 0 and 1
   * @param confidence how sure its interval is, between 0 and 1
   * @return the quantile, m
   * @throws IllegalArgumentException if nobody met the ring state
   */
  public Quantile quantile(double share, double confidence) {
    return Quantile.of(sorted, share, confidence);
  }
}
