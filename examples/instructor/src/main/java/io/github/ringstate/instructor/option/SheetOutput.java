package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In what format a report with a printed sheet goes where. */
public final class SheetOutput extends Destination {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv, json, html or pdf. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  @Mixin private final SheetSettings sheet = new SheetSettings();

  /** Made by picocli. */
  public SheetOutput() {
    super(Format.TEXT, Format.CSV, Format.JSON, Format.HTML, Format.PDF);
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
