package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In what format a report with a picture goes where. */
public final class PictureOutput extends Destination {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv, json, parquet, html, svg or png. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  @Mixin private final SheetSettings sheet = new SheetSettings();

  /** Made by picocli. */
  public PictureOutput() {
    super(
        Format.TEXT, Format.CSV, Format.JSON, Format.PARQUET, Format.HTML, Format.SVG, Format.PNG);
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
