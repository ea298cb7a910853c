package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.CharacterWriter;
import io.github.ringstate.files.report.Report;
import java.io.IOException;
import java.io.Writer;

/**
 * Writes a picture as a drawing in vectors.
 *
 * @param settings units
 * @param provenance where the file comes from, as JSON; empty for none
 */
public record SvgWriter(PageSettings settings, String provenance) implements CharacterWriter {

  @Override
  public void write(Report report, Writer out) throws IOException {
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    String drawing = SvgDrawing.of(((Pictured) report).picture(settings), "");
    // a picture that stands alone brings its letters: no machine need have the typeface
    String lettered =
        drawing.replaceFirst("</title>", "</title><style>" + SheetFont.faces(drawing) + "</style>");
    out.write(provenance.isEmpty() ? lettered : ProvenanceMark.intoSvg(lettered, provenance));
    out.write("\n");
    out.flush();
  }
}
