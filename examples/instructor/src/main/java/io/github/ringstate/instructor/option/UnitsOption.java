package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.unit.UnitSystem;
import java.util.List;
import picocli.CommandLine.Option;

/** The units in which output for people speaks. */
public final class UnitsOption {

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      defaultValue = "aviation",
      description =
          "Units of text, sheets and pictures: aviation (ft, kt, ft/min, kg, C), si (m, m/s, kg, C) or"
              + " us (ft, kt, ft/min, lb, F). csv and json say the unit in each name and stay as they"
              + " are. Any value may carry its unit (--mass-kg 1235lb), and an option be named"
              + " without one (--mass 1235lb); a bare number there is in these units, if they are"
              + " given. Unless given: ${DEFAULT-VALUE}.")
  private String units = "";

  /** Made by picocli. */
  public UnitsOption() {}

  /**
   * What was given.
   *
   * @return the units
   * @throws UserError if the name is unknown
   */
  UnitSystem units() {
    return new Choice<>("--units", List.of(UnitSystem.values()), UnitSystem::label).one(units);
  }
}
