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
  private final int arrested;
  private final int withoutOnset;

  private LossSpread(double[] sorted, int arrested, int withoutOnset) {
    this.sorted = sorted;
    this.arrested = arrested;
    this.withoutOnset = withoutOnset;
  }

  /**
   * Collects outcomes.
   *
   * @param outcomes what came of each pilot's encounter
   * @return their spread
   */
  public static LossSpread of(List<Outcome> outcomes) {
    double[] losses =
        outcomes.stream()
            .filter(outcome -> outcome.ending() != Ending.NO_ONSET)
            .mapToDouble(
                outcome ->
                    outcome.ending() == Ending.ARRESTED
                        ? outcome.altitudeLoss().orElseThrow()
                        : Double.POSITIVE_INFINITY)
            .sorted()
            .toArray();
    int arrested = (int) outcomes.stream().filter(o -> o.ending() == Ending.ARRESTED).count();
    return new LossSpread(losses, arrested, outcomes.size() - losses.length);
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
    return (double) arrested / sorted.length;
  }

  /**
   * The part of those who met the ring state and lost at least a height.
   *
   * @param height the height, m
   * @return the share, 0 to 1; NaN if nobody met it
   */
  public double shareLosing(double height) {
    return (double) Arrays.stream(sorted).filter(loss -> loss >= height).count() / sorted.length;
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
