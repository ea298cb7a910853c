package io.github.ringstate.files.report;

import java.io.IOException;
import java.io.OutputStream;

/** A way to put a report on a stream. */
public interface ReportWriter {

  /**
   * Writes a report.
   *
   * @param report what to write
   * @param out where to; flushed, not closed
   * @throws IOException if the stream takes no more
   */
  void write(Report report, OutputStream out) throws IOException;
}
