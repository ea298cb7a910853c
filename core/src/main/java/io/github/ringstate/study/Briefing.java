package io.github.ringstate.study;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;

/**
 * What a briefing needs of some techniques: the height from which a share of the simulated pilots
 * recovered with a margin, which technique loses least, and the latest moment at which each still
 * works. It says what simulated pilots did; it never says that a height is safe.
 *
 * @param share the part of the pilots that is to recover, between 0 and 1
 * @param margin height to be left below the lowest point, m, not negative
 * @param sampling how many pilots are flown
 */
public record Briefing(double share, double margin, Sampling sampling) {

  /** Margins that are accepted. */
  public static final Quantity MARGIN = new Quantity("margin", Unit.METRE, 0, 1000);

  /** Delays between which the latest moment is looked for, s, and how finely. */
  private static final double LATEST_DELAY = 8;

  private static final double DELAY_STEP = 0.25;

  /** Checks share and margin. */
  public Briefing {
    Sampling.SHARE.check(share);
    MARGIN.check(margin);
  }

  /**
   * What the simulated pilots of one technique did.
   *
   * @param study who flew what
   * @param losses their losses
   * @param floor the height at onset that the share of them needed, margin included, m; infinite
   *     where so many did not recover
   */
  public record Line(PilotStudy study, LossSpread losses, Quantile floor) {}

  /**
   * Flies the pilots of one technique, away from the ground.
   *
   * @param study the study; its base has no height
   * @param progress hears how far it has come
   * @return the line of the briefing; empty if nobody met the ring state
   * @throws CancellationException if the listener ended it
   */
  public Optional<Line> line(PilotStudy study, Progress progress) {
    if (study.base().height().isPresent()) {
      throw new IllegalArgumentException(
          "a briefing finds the height needed, so its encounter has no height");
    }
    LossSpread losses = study.fly(sampling, progress);
    if (losses.samples() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Line(study, losses, losses.quantile(share, sampling.confidence()).plus(margin)));
  }

  /**
   * Which technique to brief: the one that needs the least height, with those that the sample does
   * not tell apart from it.
   *
   * @param lines the techniques; at least one
   * @return the technique of the least need first, then those whose band overlaps its own
   */
  public static List<Line> leastHeight(List<Line> lines) {
    List<Line> ordered = new ArrayList<>(lines);
    ordered.sort(Comparator.comparingDouble(line -> line.floor().value()));
    Line best = ordered.get(0);
    if (Double.isInfinite(best.floor().value())) {
      return List.of();
    }
    return ordered.stream().filter(line -> line.floor().overlaps(best.floor())).toList();
  }

  /**
   * The longest delay with which the share of the pilots still recovered within a height, margin
   * included. More delay never gains height, so it is found by halving.
   *
   * @param study the study; its delays are not used
   * @param height the height at onset, m
   * @return the delay, s, in steps of a quarter of a second up to 8; empty if even no delay was too
   *     much, or nobody met the ring state
   */
  public OptionalDouble latestMoment(PilotStudy study, double height) {
    int low = -1;
    int high = (int) Math.round(LATEST_DELAY / DELAY_STEP) + 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      PilotStudy fixed =
          new PilotStudy(
              study.base().withDelay(middle * DELAY_STEP),
              study.pilots(),
              Optional.empty(),
              study.seed());
      LossSpread losses = fixed.fly(sampling, Progress.SILENT);
      if (losses.samples() == 0) {
        return OptionalDouble.empty();
      }
      if (losses.quantile(share, sampling.confidence()).value() + margin <= height) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low < 0 ? OptionalDouble.empty() : OptionalDouble.of(low * DELAY_STEP);
  }
}
