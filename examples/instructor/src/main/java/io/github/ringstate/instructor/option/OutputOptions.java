package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import io.github.ringstate.files.unit.UnitSystem;
import picocli.CommandLine.Option;

/** In what format a report without a picture, and without units of its own, goes where. */
public final class OutputOptions extends Destination {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv or json. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  /** Made by picocli. */
  public OutputOptions() {
    super(Format.TEXT, Format.CSV, Format.JSON);
  }

  @Override
  String format() {
    return format;
  }

  @Override
  Writers writers() {
    return Writers.plain(UnitSystem.AVIATION);
  }
}
