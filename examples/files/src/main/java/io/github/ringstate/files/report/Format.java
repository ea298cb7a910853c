package io.github.ringstate.files.report;

/** The formats in which a report can be had. */
public enum Format {
  /** Plain text for people, at most 100 columns wide. */
  TEXT("text"),
  /** Comma-separated values, RFC 4180. */
  CSV("csv"),
  /** JSON, RFC 8259. */
  JSON("json"),
  /** Rows and columns for machines, Apache Parquet. */
  PARQUET("parquet"),
  /** A page for a browser that needs nothing else. */
  HTML("html"),
  /** A page for a printer. */
  PDF("pdf"),
  /** A drawing in vectors. */
  SVG("svg"),
  /** A drawing in dots. */
  PNG("png");

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
}
