package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;
import java.util.stream.IntStream;

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
    ReferenceTable table = ReferenceTable.read("wanted.csv");
    List<String> authors = table.words("author");
    return IntStream.range(0, authors.size())
        .mapToObj(
            i ->
                new Wanted(
                    new Source(
                        authors.get(i),
                        table.words("title").get(i),
                        table.words("number").get(i),
                        table.words("year").get(i),
                        ""),
                    table.words("would_settle").get(i)))
        .toList();
  }
}
