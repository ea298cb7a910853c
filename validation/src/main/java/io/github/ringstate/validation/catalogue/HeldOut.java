package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;
import java.util.stream.IntStream;

/** The sources that set no number of the library, now or later. */
public final class HeldOut {

  private static final ReferenceTable TABLE = ReferenceTable.read("held_out.csv");
  private static final List<String> KEYS = TABLE.words("key");
  private static final List<Source> SOURCES =
      IntStream.range(0, KEYS.size())
          .mapToObj(
              i ->
                  new Source(
                      TABLE.words("author").get(i),
                      TABLE.words("title").get(i),
                      TABLE.words("number").get(i),
                      TABLE.words("year").get(i),
                      TABLE.words("holds").get(i)))
          .toList();

  private HeldOut() {}

  /**
   * All of them, as the file names them.
   *
   * @return an unmodifiable list
   */
  public static List<Source> sources() {
    return SOURCES;
  }

  /**
   * Whether a source is held out.
   *
   * @param source a source, whatever its place
   * @return true if the file names its work
   */
  public static boolean covers(Source source) {
    return SOURCES.stream().anyMatch(held -> held.work().equals(source.work()));
  }

  static Source source(String key) {
    int index = KEYS.indexOf(key);
    if (index < 0) {
      throw new IllegalArgumentException("no source is held out by the name of " + key);
    }
    return SOURCES.get(index);
  }
}
