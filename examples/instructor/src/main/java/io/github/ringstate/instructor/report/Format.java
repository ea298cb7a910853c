package io.github.ringstate.instructor.report;

/** The formats in which a report can be had. */
public enum Format {
  /** Plain text for people, at most 100 columns wide. */
  TEXT("text"),
  /** Comma-separated values, RFC 4180. */
  CSV("csv"),
  /** JSON, RFC 8259. */
  JSON("json");

  private final String label;

  Format(String label) {
    this.label = label;
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
    return switch (this) {
      case TEXT -> new TextWriter();
      case CSV -> new CsvWriter();
      case JSON -> new JsonWriter();
    };
  }
}
