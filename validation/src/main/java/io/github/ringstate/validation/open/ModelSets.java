package io.github.ringstate.validation.open;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.study.model.Accepted;
import io.github.ringstate.study.model.OpenNumbers;
import io.github.ringstate.study.model.PublishedRange;
import io.github.ringstate.study.model.PublishedRanges;
import java.util.List;
import java.util.stream.LongStream;

/**
 * Models as their open numbers are thought to be: evenly drawn, and those that meet the published
 * ranges.
 *
 * @param even models as they are drawn at first
 * @param accepted models that meet all published ranges
 */
public record ModelSets(List<RingStateInflow> even, Accepted<RingStateInflow> accepted) {

  private static final long SEED = 1;

  /**
   * A published range and the draws.
   *
   * @param range the range
   * @param standard what the standard model has
   * @param share the part of the even draws that meets it, 0 to 1
   */
  public record RangeShare(PublishedRange range, double standard, double share) {

    /**
     * Whether the standard model meets the range.
     *
     * @return true if it does
     */
    public boolean holds() {
      return range.holds(RingStateInflow.standard());
    }
  }

  /**
   * One number before and after.
   *
   * @param parameter the number
   * @param even as it is drawn
   * @param accepted in the models that meet the published ranges
   */
  public record NumberSpread(Parameter parameter, Summary even, Summary accepted) {}

  /** Copies the list. */
  public ModelSets {
    even = List.copyOf(even);
  }

  /**
   * Draws models.
   *
   * @param size how many of each
   * @return the models
   */
  public static ModelSets draw(int size) {
    return new ModelSets(
        LongStream.range(0, size)
            .mapToObj(i -> OpenNumbers.drawn(SEED, i, Drawing.INDEPENDENT))
            .toList(),
        OpenNumbers.accepted(size, SEED));
  }

  /**
   * How many of the even draws meet each range.
   *
   * @return an entry for each range
   */
  public List<RangeShare> ranges() {
    return PublishedRanges.ALL.stream()
        .map(
            range ->
                new RangeShare(
                    range,
                    range.measure().applyAsDouble(RingStateInflow.standard()),
                    (double) even.parallelStream().filter(range::holds).count() / even.size()))
        .toList();
  }

  /**
   * The open numbers before and after.
   *
   * @return an entry for each number
   */
  public List<NumberSpread> numbers() {
    return OpenNumbers.SPREADS.stream()
        .map(
            spread ->
                new NumberSpread(
                    spread.parameter(),
                    summary(even, spread.parameter()),
                    summary(accepted.kept(), spread.parameter())))
        .toList();
  }

  private static Summary summary(List<RingStateInflow> models, Parameter parameter) {
    return Summary.of(
        models.stream().mapToDouble(model -> model.numbers().get(parameter)).toArray());
  }
}
