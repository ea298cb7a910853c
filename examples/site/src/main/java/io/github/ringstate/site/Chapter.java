package io.github.ringstate.site;

import java.util.Optional;
import java.util.stream.Stream;

/** A text of the repository that becomes a page of the site. */
enum Chapter {
  /** What the tool prints and what the model knows. */
  OVERVIEW("README.md", "overview.html", "Overview"),
  /** For those who embed the library. */
  EMBEDDING("examples/embedding/GUIDE.md", "embedding.html", "The library"),
  /** For those who fly more than one machine can. */
  CLUSTER("examples/cluster/GUIDE.md", "cluster.html", "On a cluster"),
  /** What a descent costs in time. */
  BENCHMARKS("benchmarks/README.md", "benchmarks.html", "Benchmarks"),
  /** For contributors. */
  DEVELOPERS("DEVELOPERS.md", "developers.html", "For developers");

  private final String source;
  private final String page;
  private final String label;

  Chapter(String source, String page, String label) {
    this.source = source;
    this.page = page;
    this.label = label;
  }

  /** The text, from the top of the repository. */
  String source() {
    return source;
  }

  /** The page, from the top of the site. */
  String page() {
    return page;
  }

  /** What the bar at the top of each page calls it. */
  String label() {
    return label;
  }

  /** The page of a text. */
  static Optional<String> pageOf(String source) {
    return Stream.of(values()).filter(c -> c.source.equals(source)).map(Chapter::page).findFirst();
  }
}
