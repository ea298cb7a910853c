package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In what format and units a report without a picture goes where. */
public final class TableOutput extends Destination {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv or json. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  @Mixin private final UnitsOption units = new UnitsOption();

  /** Made by picocli. */
  public TableOutput() {
    super(Format.TEXT, Format.CSV, Format.JSON);
  }

  @Override
  String format() {
    return format;
  }

  @Override
  Writers writers() {
    return Writers.plain(units.units());
  }
}
