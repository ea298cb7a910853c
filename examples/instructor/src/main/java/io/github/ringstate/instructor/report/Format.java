package io.github.ringstate.instructor.report;

import java.util.function.Supplier;

/** The formats in which a report can be had. */
public enum Format {
  /** Plain text for people, at most 100 columns wide. */
  TEXT("text", TextWriter::new),
  /** Comma-separated values, RFC 4180. */
  CSV("csv", CsvWriter::new),
  /** JSON, RFC 8259. */
  JSON("json", JsonWriter::new);

  private final String label;
  private final Supplier<ReportWriter> maker;

  Format(String label, Supplier<ReportWriter> maker) {
    this.label = label;
    this.maker = maker;
  }

  /**
   * The format's name.
   *
   * @return one lower-case word
   */
  public String label() {
    return label;
  }

  /**
   * Makes a writer; only then are the classes it needs loaded.
   *
   * @return the writer
   */
  public ReportWriter writer() {
    return maker.get();
  }
}
