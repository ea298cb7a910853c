package io.github.ringstate.instructor.option;

import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Briefing;
import picocli.CommandLine.Option;

/** Height to be left below the lowest point. */
public final class MarginOption {

  @Option(
      names = "--margin-ft",
      paramLabel = "FT",
      defaultValue = "50",
      description = "Height to be left below the lowest point. Unless given: ${DEFAULT-VALUE}.")
  private String margin = "";

  /** Made by picocli. */
  public MarginOption() {}

  /**
   * The margin.
   *
   * @return the margin, m
   */
  public double margin() {
    return NumberText.si("--margin-ft", margin, Ranges.in(Unit.FOOT, Briefing.MARGIN));
  }
}
