package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.CharacterWriter;
import io.github.ringstate.files.report.Report;
import java.io.IOException;
import java.io.Writer;

/**
 * Writes a page that needs nothing else: style, letters, drawings and data are part of it.
 *
 * @param settings paper, units and date
 * @param provenance where the file comes from, as JSON; empty for none
 */
public record HtmlWriter(PageSettings settings, String provenance) implements CharacterWriter {

  /**
   * A page that is no sheet: on no paper, with a head and a style of its own.
   *
   * @param page the page
   * @return a whole document that needs nothing else
   */
  public static String html(Page page) {
    return Template.fill(page, (name, picture) -> SvgDrawing.of(picture, name + "-"));
  }

  @Override
  public void write(Report report, Writer out) throws IOException {
    String page = html(settings.dress(((Printable) report).page(settings)));
    out.write(provenance.isEmpty() ? page : ProvenanceMark.intoHtml(page, provenance));
    out.flush();
  }
}
