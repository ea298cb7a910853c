package io.github.ringstate.instructor.option;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Sampling;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What share of the pilots is to recover, with what margin, and how many may hit the ground. */
public final class BriefingOptions {

  /** A thousand pilots do not tell a smaller share; with a greater one nothing is refused. */
  private static final Quantity GROUND_SHARE = new Quantity("share", Unit.ONE, 0.001, 0.5);

  @Option(
      names = "--share",
      paramLabel = "SHARE",
      defaultValue = "0.95",
      description =
          "Share of the simulated pilots that is to recover. Unless given: ${DEFAULT-VALUE}.")
  private String share = "";

  @Option(
      names = "--ground-share",
      paramLabel = "SHARE",
      defaultValue = "0.05",
      description =
          "Share of the simulated pilots who would hit the ground above which no technique is"
              + " briefed for a height; what is said then is not to fly below the height needed. A"
              + " technique is briefed only where the 95 %% confidence interval of its share ends"
              + " there or below."
              + " Unless given: ${DEFAULT-VALUE}.")
  private String groundShare = "";

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
   * The share of the pilots who would hit the ground above which no technique is briefed.
   *
   * @return the share, between 0 and 1
   */
  public double groundShare() {
    return NumberText.one("--ground-share", groundShare, GROUND_SHARE);
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
