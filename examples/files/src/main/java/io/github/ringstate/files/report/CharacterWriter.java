package io.github.ringstate.files.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;

/** A way to put a report down in characters; as bytes they are UTF-8. */
public interface CharacterWriter extends ReportWriter {

  /**
   * Writes a report.
   *
   * @param report what to write
   * @param out where to; flushed, not closed
   * @throws IOException if the stream takes no more
   */
  void write(Report report, Writer out) throws IOException;

  @Override
  default void write(Report report, OutputStream out) throws IOException {
    Writer characters = new OutputStreamWriter(out, UTF_8);
    write(report, characters);
    characters.flush();
  }
}
