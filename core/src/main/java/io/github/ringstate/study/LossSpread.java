package io.github.ringstate.study;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.SobolStream;
import io.github.ringstate.encounter.Ending;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The altitude losses of many pilots. A pilot whose descent was not arrested above the ground
 * counts with an infinite loss, never as nothing; one who did not meet the ring state counts among
 * {@link #withoutOnset} only.
 */
public final class LossSpread {

  private final double[] sorted;
  private final Map<Ending, Long> endings;
  private final Intervals intervals;
  private final List<PilotFlight> flights;

  private LossSpread(
      double[] sorted, Map<Ending, Long> endings, Intervals intervals, List<PilotFlight> flights) {
    this.sorted = sorted;
    this.endings = endings;
    this.intervals = intervals;
    this.flights = flights;
  }

  /** The same spread, found by a study that may have ended because its interval was narrow. */
  LossSpread stopped() {
    return new LossSpread(sorted, endings, new StoppedIntervals(intervals), flights);
  }

  /** The same spread of flights that are known one by one. */
  LossSpread with(List<PilotFlight> known) {
    return new LossSpread(sorted, endings, intervals, known);
  }

  /**
   * Collects what came of some encounters, each drawn by itself.
   *
   * @param endings how each ended
   * @param losses the altitude loss of each, m; only those of arrested descents are looked at
   * @return their spread
   */
  public static LossSpread of(Ending[] endings, double[] losses) {
    return of(endings, losses, Drawing.INDEPENDENT);
  }

  /**
   * Collects what came of some encounters.
   *
   * @param endings how each ended, in the order of their numbers, from 0
   * @param losses the altitude loss of each, m; only those of arrested descents are looked at
   * @param drawing how they were drawn
   * @return their spread
   */
  public static LossSpread of(Ending[] endings, double[] losses, Drawing drawing) {
    double[] sorted = sorted(endings, losses, 0, 1);
    return new LossSpread(
        sorted,
        Arrays.stream(endings)
            .collect(Collectors.groupingBy(ending -> ending, Collectors.counting())),
        switch (drawing) {
          case INDEPENDENT -> new IndependentIntervals(sorted);
          case SOBOL -> {
            double[][] sets = new double[SobolStream.SETS][];
            Arrays.setAll(sets, set -> sorted(endings, losses, set, SobolStream.SETS));
            yield new SetIntervals(sorted, sets);
          }
        },
        List.of());
  }

  /** The losses of those who met the ring state, of every so manieth pilot. */
  private static double[] sorted(Ending[] endings, double[] losses, int from, int step) {
    double[] met = new double[endings.length];
    int size = 0;
    for (int i = from; i < endings.length; i += step) {
      if (endings[i] != Ending.NO_ONSET) {
        met[size++] = endings[i] == Ending.ARRESTED ? losses[i] : Double.POSITIVE_INFINITY;
      }
    }
    double[] sorted = Arrays.copyOf(met, size);
    Arrays.sort(sorted);
    return sorted;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LossSpread spread
        && Arrays.equals(sorted, spread.sorted)
        && endings.equals(spread.endings)
        && intervals.equals(spread.intervals)
        && flights.equals(spread.flights);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(sorted) + endings.hashCode();
  }

  /** How many there are and how they ended, with the median loss in metres. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("losses of " + sorted.length + " pilots");
    for (Ending ending : Ending.values()) {
      text.append(", ").append(ending.label()).append(" ").append(count(ending));
    }
    return sorted.length == 0 ? text.toString() : text + ", median " + loss(0.5) + " m";
  }

  /**
   * The losses themselves.
   *
   * @return a copy, m, in ascending order; infinite for those whose descent was not arrested above
   *     the ground
   */
  public double[] losses() {
    return sorted.clone();
  }

  /**
   * What each pilot was like and lost, those too who did not meet the ring state: all that a
   * regression of losses on delays and techniques needs.
   *
   * @return the flights by number, in order and unmodifiable; what a pilot was like is drawn again
   *     whenever it is asked for. Empty if the spread was made of losses alone
   */
  public List<PilotFlight> flights() {
    return flights;
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
   * How many encounters ended in a way.
   *
   * @param ending the way
   * @return their number
   */
  public int count(Ending ending) {
    return endings.getOrDefault(ending, 0L).intValue();
  }

  /**
   * How many pilots did not meet the ring state.
   *
   * @return their number, not counted in {@link #samples}
   */
  public int withoutOnset() {
    return count(Ending.NO_ONSET);
  }

  /**
   * The part of those who met the ring state and arrested the descent above the ground.
   *
   * @return the share, 0 to 1; NaN if nobody met it
   */
  public double arrestedShare() {
    return (double) count(Ending.ARRESTED) / sorted.length;
  }

  /**
   * The same part with its confidence interval.
   *
   * @param confidence how sure the interval is, between 0 and 1
   * @return the share
   * @throws IllegalArgumentException if nobody met the ring state
   */
  public Share arrested(double confidence) {
    Share not = intervals.shareLosing(Double.POSITIVE_INFINITY, confidence);
    return new Share(1 - not.value(), 1 - not.high(), 1 - not.low());
  }

  /**
   * The part of those who met the ring state and lost at least a height.
   *
   * @param height the height, m; may be infinite
   * @return the share, 0 to 1; NaN if nobody met it
   * @throws IllegalArgumentException if the height is not a number
   */
  public double shareLosing(double height) {
    return (double) Intervals.losing(sorted, height) / sorted.length;
  }

  /**
   * The part of those who met the ring state and lost at least a height, with its confidence
   * interval: who would have reached the ground from that height above it.
   *
   * @param height the height, m; may be infinite
   * @param confidence how sure the interval is, between 0 and 1
   * @return the share
   * @throws IllegalArgumentException if nobody met the ring state or the height is not a number
   */
  public Share shareLosing(double height, double confidence) {
    return intervals.shareLosing(height, confidence);
  }

  /**
   * The loss that a part of the pilots does not exceed.
   *
   * @param share the part, between 0 and 1
   * @return the value of {@link #quantile}, m
   * @throws IllegalArgumentException if nobody met the ring state
   */
  public double loss(double share) {
    return Quantile.value(sorted, share);
  }

  /**
   * The loss that a part of the pilots does not exceed, with its confidence interval.
   *
   * @param share the part, between 0 and 1
   * @param confidence how sure its interval is, between 0 and 1
   * @return the quantile, m
   * @throws IllegalArgumentException if nobody met the ring state
   */
  public Quantile quantile(double share, double confidence) {
    return intervals.quantile(share, confidence);
  }
}
