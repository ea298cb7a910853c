package io.github.ringstate.instructor.option;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Paper;
import io.github.ringstate.sheets.page.PrintDate;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Paper and units of printed sheets and pictures. */
public final class SheetSettings {

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "a4",
      description =
          "Paper for which pages are laid out: a4 or letter. Unless given: ${DEFAULT-VALUE}.")
  private String paper = "";

  @Mixin private final PlanOption plan = new PlanOption();
  @Mixin private final UnitsOption units = new UnitsOption();

  /** Made by picocli. */
  public SheetSettings() {}

  /**
   * What was given.
   *
   * @return paper, units and date
   */
  PageSettings settings() {
    UnitSystem spoken = units.units();
    return new PageSettings(
        new Choice<>("--paper", List.of(Paper.values()), Paper::label).one(paper),
        spoken,
        PrintDate.of(System.getenv(PrintDate.VARIABLE), Clock.systemUTC()),
        plan.terms(spoken));
  }
}
