package io.github.ringstate.study;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;

/**
 * What a briefing needs of some techniques: the height from which a share of the simulated pilots
 * recovered with a margin, which technique loses least, and the latest moment at which each
 * technique still works. It says what simulated pilots did; it never says that a height is safe.
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

  private static final Comparator<Line> BY_FLOOR =
      Comparator.comparingDouble(line -> line.floor().value());

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
    requireNoHeight(study);
    LossSpread losses = study.fly(sampling.withShare(share), progress);
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
   * @return the technique of the least need first, then those whose band overlaps its own; empty if
   *     with no technique the share of the pilots recovered
   */
  public static List<Line> leastHeight(List<Line> lines) {
    Line best =
        lines.stream()
            .min(BY_FLOOR)
            .orElseThrow(
                () -> new IllegalArgumentException("a briefing needs at least one technique"));
    if (Double.isInfinite(best.floor().value())) {
      return List.of();
    }
    return lines.stream()
        .filter(line -> line.floor().overlaps(best.floor()))
        .sorted(BY_FLOOR)
        .toList();
  }

  /**
   * The delay up to which the share of the pilots still recovered within a height, margin included:
   * with it and with every shorter one. They are tried from none upwards, to the first with which
   * they did not; a longer one is not relied on even if it does better again, as where the wind or
   * the craft's own speed carries those who wait out of the ring state.
   *
   * @param study the study; its delays are not used, its base has no height
   * @param height the height at onset, m
   * @param progress hears how far it has come
   * @return the delay, s, in steps of a quarter of a second up to 8; empty if even no delay was too
   *     much, or nobody met the ring state
   * @throws CancellationException if the listener ended it, or the thread was interrupted
   */
  public OptionalDouble latestMoment(PilotStudy study, double height, Progress progress) {
    requireNoHeight(study);
    int steps = (int) Math.round(LATEST_DELAY / DELAY_STEP) + 1;
    int held = 0;
    while (held < steps
        && recover(study, held * DELAY_STEP, height, new PartOf(progress, held, steps))) {
      held++;
    }
    return held == 0 ? OptionalDouble.empty() : OptionalDouble.of((held - 1) * DELAY_STEP);
  }

  private boolean recover(PilotStudy study, double delay, double height, Progress progress) {
    PilotStudy fixed =
        new PilotStudy(
            study.base().withDelay(delay),
            study.pilots(),
            Optional.empty(),
            study.seed(),
            study.drawing());
    LossSpread losses = fixed.fly(sampling.withShare(share), progress);
    return losses.samples() > 0 && losses.loss(share) + margin <= height;
  }

  private static void requireNoHeight(PilotStudy study) {
    if (study.base().height().isPresent()) {
      throw new IllegalArgumentException(
          "a briefing finds the height needed, so its encounter has no height");
    }
  }
}
