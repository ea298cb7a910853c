package io.github.ringstate.instructor.option;

import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Briefing;
import io.github.ringstate.study.Sampling;
import picocli.CommandLine.Option;

/** What share of the pilots is to recover, and with what margin. */
public final class BriefingOptions {

  @Option(
      names = "--share",
      paramLabel = "SHARE",
      defaultValue = "0.95",
      description =
          "Share of the simulated pilots that is to recover. Unless given: ${DEFAULT-VALUE}.")
  private String share = "";

  @Option(
      names = "--margin-ft",
      paramLabel = "FT",
      defaultValue = "50",
      description = "Height to be left below the lowest point. Unless given: ${DEFAULT-VALUE}.")
  private String margin = "";

  /** Made by picocli. */
  public BriefingOptions() {}

  /**
   * The share.
   *
   * @return the share, between 0 and 1
   */
  public double share() {
    return NumberText.one("--share", share, Sampling.SHARE);
  }

  /**
   * The margin.
   *
   * @return the margin, ft
   */
  public double marginFt() {
    return NumberText.one("--margin-ft", margin, Ranges.in(Unit.FOOT, Briefing.MARGIN));
  }
}
