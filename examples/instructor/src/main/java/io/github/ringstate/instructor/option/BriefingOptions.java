package io.github.ringstate.instructor.option;

import io.github.ringstate.study.Sampling;
import picocli.CommandLine.Mixin;
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

  @Mixin private final MarginOption margin = new MarginOption();

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
   * @return the margin, m
   */
  public double margin() {
    return margin.margin();
  }
}
