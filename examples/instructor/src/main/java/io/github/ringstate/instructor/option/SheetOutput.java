package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.sheets.page.PageSettings;
import java.io.OutputStream;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In what format a report with a printed sheet goes where. */
public final class SheetOutput extends Destination {

  private static final List<Format> FORMATS =
      List.of(Format.TEXT, Format.CSV, Format.JSON, Format.HTML, Format.PDF);

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv, json, html or pdf. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  @Mixin private final SheetSettings sheet = new SheetSettings();

  /** Made by picocli. */
  public SheetOutput() {}

  /**
   * Whether a page is wanted.
   *
   * @return false for text and data
   */
  public boolean isPage() {
    return List.of(Format.HTML.label(), Format.PDF.label()).contains(format.strip());
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
