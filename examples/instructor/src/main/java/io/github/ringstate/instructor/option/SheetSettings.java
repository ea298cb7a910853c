package io.github.ringstate.instructor.option;

import io.github.ringstate.instructor.sheet.PageSettings;
import io.github.ringstate.instructor.sheet.Paper;
import io.github.ringstate.instructor.sheet.PrintDate;
import io.github.ringstate.instructor.sheet.UnitSystem;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Option;

/** Paper and units of printed sheets and pictures. */
public final class SheetSettings {

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "a4",
      description = "Paper of html and pdf: a4 or letter. Unless given: ${DEFAULT-VALUE}.")
  private String paper = "";

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      defaultValue = "aviation",
      description =
          "Units of sheets and pictures: aviation (ft, kt, ft/min) or si (m, m/s). Text is in"
              + " aviation units; csv and json say the unit in each name. Unless given:"
              + " ${DEFAULT-VALUE}.")
  private String units = "";

  /** Made by picocli. */
  public SheetSettings() {}

  /**
   * What was given.
   *
   * @return paper, units and date
   */
  PageSettings settings() {
    return new PageSettings(
        new Choice<>("--paper", List.of(Paper.values()), Paper::label).one(paper),
        new Choice<>("--units", List.of(UnitSystem.values()), UnitSystem::label).one(units),
        PrintDate.of(System.getenv(PrintDate.VARIABLE), Clock.systemUTC()));
  }
}
