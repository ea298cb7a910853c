package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;

/**
 * A work that was looked for and could not be read.
 *
 * @param source the work, as far as it is known
 * @param settles what it would settle
 */
public record Wanted(Source source, String settles) {

  /**
   * All of them, as the file names them.
   *
   * @return an unmodifiable list
   */
  public static List<Wanted> works() {
    return SourceTable.sources(ReferenceTable.read("wanted.csv"), "would_settle").stream()
        .map(work -> new Wanted(work.at(""), work.place()))
        .toList();
  }
}
