package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.sheets.page.PageSettings;
import java.io.OutputStream;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In what format a report with a picture goes where. */
public final class PictureOutput extends Destination {

  private static final List<Format> FORMATS =
      List.of(
          Format.TEXT,
          Format.CSV,
          Format.JSON,
          Format.PARQUET,
          Format.HTML,
          Format.SVG,
          Format.PNG);

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv, json, parquet, html, svg or png. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  @Mixin private final SheetSettings sheet = new SheetSettings();

  /** Made by picocli. */
  public PictureOutput() {}

  /**
   * Whether a picture is wanted.
   *
   * @return false for text and data
   */
  public boolean isPicture() {
    return List.of(Format.HTML.label(), Format.SVG.label(), Format.PNG.label())
        .contains(format.strip());
  }

  /**
   * The way out for the report; asked for before anything is computed, so that a wrong option costs
   * no time.
   *
   * @param terminal where the report goes if no file is given
   * @return the way out
   */
  public Delivery delivery(OutputStream terminal) {
    PageSettings settings = sheet.settings();
    return delivery(
        format, FORMATS, (chosen, json) -> Writers.any(chosen, settings, json), terminal);
  }
}
