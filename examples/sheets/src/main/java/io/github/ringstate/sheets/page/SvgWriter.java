package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.CharacterWriter;
import io.github.ringstate.files.report.Report;
import java.io.IOException;
import java.io.Writer;

/**
 * Writes a picture as a drawing in vectors.
 *
 * @param settings units
 */
public record SvgWriter(PageSettings settings) implements CharacterWriter {

  @Override
  public void write(Report report, Writer out) throws IOException {
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    String drawing = SvgDrawing.of(((Pictured) report).picture(settings), "");
    // a picture that stands alone brings its letters: no machine need have the typeface
    out.write(
        drawing.replaceFirst(
            "</title>", "</title><style>" + SheetFont.faces(drawing) + "</style>"));
    out.write("\n");
    out.flush();
  }
}
