package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.CsvWriter;
import io.github.ringstate.files.report.Format;
import io.github.ringstate.files.report.JsonWriter;
import io.github.ringstate.files.report.ReportWriter;
import io.github.ringstate.files.report.TextWriter;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.delivery.ParquetWriter;
import io.github.ringstate.sheets.page.HtmlWriter;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.PdfWriter;
import io.github.ringstate.sheets.page.PngWriter;
import io.github.ringstate.sheets.page.SvgWriter;

/** The writers by format; only the one that is made has its classes loaded. */
@FunctionalInterface
interface Writers {

  /**
   * Makes a writer.
   *
   * @param format one of the formats that there are
   * @param provenance where the report comes from, as JSON
   * @return the writer
   */
  ReportWriter of(Format format, String provenance);

  /**
   * Writers of characters alone: text, CSV and JSON.
   *
   * @param units the units of text
   * @return the writers
   */
  static Writers plain(UnitSystem units) {
    return (format, provenance) ->
        switch (format) {
          case TEXT -> new TextWriter(units);
          case CSV -> new CsvWriter();
          case JSON -> new JsonWriter(provenance);
          case PARQUET, HTML, PDF, SVG, PNG -> throw new IllegalArgumentException(format.label());
        };
  }

  /**
   * Writers of every format.
   *
   * @param settings paper, units and date
   * @return the writers
   */
  static Writers any(PageSettings settings) {
    return (format, provenance) ->
        switch (format) {
          case TEXT, CSV, JSON -> plain(settings.units()).of(format, provenance);
          case PARQUET -> new ParquetWriter(provenance);
          case HTML -> new HtmlWriter(settings, provenance);
          case PDF -> new PdfWriter(settings, provenance);
          case SVG -> new SvgWriter(settings, provenance);
          case PNG -> new PngWriter(settings, provenance);
        };
  }
}
