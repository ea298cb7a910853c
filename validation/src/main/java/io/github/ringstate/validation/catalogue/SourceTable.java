package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A reference file of works: their keys, and the works in the same order.
 *
 * @param keys what the works are called here
 * @param sources the works
 */
record SourceTable(List<String> keys, List<Source> sources) {

  /** Reads a file; the last part of each source stands in the column of the name given. */
  static SourceTable read(String name, String place) {
    ReferenceTable table = ReferenceTable.read(name);
    return new SourceTable(table.words("key"), sources(table, place));
  }

  static List<Source> sources(ReferenceTable table, String place) {
    List<String> authors = table.words("author");
    return IntStream.range(0, authors.size())
        .mapToObj(
            i ->
                new Source(
                    authors.get(i),
                    table.words("title").get(i),
                    table.words("number").get(i),
                    table.words("year").get(i),
                    table.words(place).get(i)))
        .toList();
  }

  Source source(String key) {
    int index = keys.indexOf(key);
    if (index < 0) {
      throw new IllegalArgumentException("there is no source by the name of " + key);
    }
    return sources.get(index);
  }
}
