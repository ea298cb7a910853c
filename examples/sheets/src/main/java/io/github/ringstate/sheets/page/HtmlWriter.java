package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.CharacterWriter;
import io.github.ringstate.files.report.Report;
import java.io.IOException;
import java.io.Writer;

/**
 * Writes a page that needs nothing else: style, letters, drawings and data are part of it.
 *
 * @param settings paper, units and date
 */
public record HtmlWriter(PageSettings settings) implements CharacterWriter {

  @Override
  public void write(Report report, Writer out) throws IOException {
    out.write(
        Template.fill(
            ((Printable) report).page(settings),
            settings,
            (name, picture) -> SvgDrawing.of(picture, name + "-")));
    out.flush();
  }
}
