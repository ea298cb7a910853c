package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In what format a report with a page for the screen goes where. */
public final class ScreenOutput extends Destination {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv, json or html. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  @Mixin private final SheetSettings sheet = new SheetSettings();

  /** Made by picocli. */
  public ScreenOutput() {
    super(Format.TEXT, Format.CSV, Format.JSON, Format.HTML);
  }

  @Override
  String format() {
    return format;
  }

  @Override
  Writers writers() {
    return Writers.any(sheet.settings());
  }
}
