package io.github.ringstate.instructor.pilots;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Share;
import io.github.ringstate.study.model.ModelSpread;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hipparchus.util.FastMath;

/**
 * What many pilots lost.
 *
 * @param people with the standard model
 * @param models the same people with each of the other models; may be empty
 */
public record PilotLosses(LossSpread people, List<LossSpread> models) {

  /** The confidence of every interval. */
  static final double CONFIDENCE = 0.95;

  private static final int DIGITS = 4;

  /** No more pilots than this are ever asked for. */
  private static final int MOST = 1 << 20;

  /** What came of most of those who did not arrest the descent, if they reached the ground. */
  public static final String GROUND = "ground";

  /** Copies the list. */
  public PilotLosses {
    models = List.copyOf(models);
  }

  /**
   * How many met the ring state.
   *
   * @return their number, with the standard model
   */
  public int samples() {
    return people.samples();
  }

  /**
   * The least number of pilots for which the interval of a loss has two ends. With fewer, all of
   * them may well have lost less than that part of very many pilots, or all of them more: the
   * chances are the share to the power of their number, and the rest likewise (David and Nagaraja,
   * <i>Order Statistics</i>, ch. 7; from memory).
   *
   * @param share the part, between 0 and 1
   * @return the number
   */
  public static long fewest(double share) {
    return (long)
        Math.ceil(FastMath.log((1 - CONFIDENCE) / 2) / FastMath.log(Math.max(share, 1 - share)));
  }

  /**
   * Whether too few pilots met the ring state for the interval of a loss to have two ends.
   *
   * @param share the part, between 0 and 1
   * @return true if they are fewer than {@link #fewest}
   */
  public boolean tooFew(double share) {
    return people.samples() < fewest(share);
  }

  /**
   * The loss that a part of the pilots did not exceed.
   *
   * @param share the part, 0 to 1
   * @return the loss, m, infinite where so many did not arrest the descent; empty if nobody met the
   *     ring state
   */
  public Optional<Quantile> loss(double share) {
    return people.samples() == 0
        ? Optional.empty()
        : Optional.of(people.quantile(share, CONFIDENCE));
  }

  /**
   * The loss with the other models.
   *
   * @param share the part, 0 to 1
   * @return the loss with the middle model, m, and what nine models in ten lie within; empty
   *     without models, or if nobody met the ring state with any
   */
  public Optional<Quantile> modelsLoss(double share) {
    return models.stream().allMatch(spread -> spread.samples() == 0)
        ? Optional.empty()
        : Optional.of(ModelSpread.band(models, share));
  }

  /**
   * The loss with people and model both: the interval of the people alone, widened by that of the
   * models.
   *
   * @param share the part, 0 to 1
   * @return the loss, m; empty if nobody met the ring state
   */
  public Optional<Quantile> widestLoss(double share) {
    Optional<Quantile> models = modelsLoss(share);
    return loss(share).map(people -> models.map(people::widenedBy).orElse(people));
  }

  /**
   * The part of those who met the ring state and arrested the descent above the ground.
   *
   * @param decimals how many decimals it is cut off at, so that only all of them make a whole one
   * @return the share, 0 to 1; empty if nobody met the ring state
   */
  Optional<BigDecimal> arrestedShare(int decimals) {
    return people.samples() == 0
        ? Optional.empty()
        : Optional.of(
            BigDecimal.valueOf(people.count(Ending.ARRESTED))
                .divide(BigDecimal.valueOf(people.samples()), decimals, RoundingMode.DOWN));
  }

  /**
   * The part of those who met the ring state and arrested the descent above the ground.
   *
   * @return the share, 0 to 1, cut off after four decimals; empty if nobody met the ring state
   */
  public Optional<BigDecimal> arrestedShare() {
    return arrestedShare(DIGITS);
  }

  /**
   * The same part with its confidence interval.
   *
   * @return the share; empty if nobody met the ring state
   */
  public Optional<Share> arrested() {
    return people.samples() == 0 ? Optional.empty() : Optional.of(people.arrested(CONFIDENCE));
  }

  /**
   * What came of most of those who did not arrest the descent.
   *
   * @return a word or two for a cell of a table
   */
  public String failure() {
    return people.count(Ending.GROUND)
            > people.count(Ending.NOT_ARRESTED) + people.count(Ending.ARREST_NOT_LASTING)
        ? GROUND
        : "not arrested";
  }

  /**
   * The part of those who met the ring state and did not arrest the descent above a height.
   *
   * @param height the height at onset, m
   * @return the share, its interval widened by the least and greatest share with the other models;
   *     empty if nobody met the ring state
   */
  public Optional<Share> shareLosing(double height) {
    if (people.samples() == 0) {
      return Optional.empty();
    }
    Share alone = people.shareLosing(height, CONFIDENCE);
    double low = alone.low();
    double high = alone.high();
    for (LossSpread model : models) {
      if (model.samples() > 0) {
        low = Math.min(low, model.shareLosing(height));
        high = Math.max(high, model.shareLosing(height));
      }
    }
    return Optional.of(new Share(alone.value(), low, high));
  }

  /**
   * How many pilots would show that among very many no more than a part do not arrest the descent
   * above a height, if as large a share of them did not as of those flown.
   *
   * @param height the height at onset, m
   * @param part the part, between 0 and 1
   * @return the number flown, doubled until the interval of as many independent pilots ends at the
   *     part or below, so about what it takes; empty if a million would not do, if other models
   *     were flown, which more pilots do not settle, or if nobody met the ring state
   */
  public OptionalInt enough(double height, double part) {
    if (people.samples() == 0 || !models.isEmpty()) {
      return OptionalInt.empty();
    }
    int pilots = people.samples();
    int down = (int) Math.rint(people.shareLosing(height) * pilots);
    while (pilots <= MOST && Share.of(down, pilots, CONFIDENCE).high() > part) {
      pilots *= 2;
      down *= 2;
    }
    return pilots <= MOST ? OptionalInt.of(pilots) : OptionalInt.empty();
  }
}
