package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Source;
import java.util.List;

/** The sources that set no number of the library, now or later. */
public final class HeldOut {

  private static final SourceTable TABLE = SourceTable.read("held_out.csv", "holds");

  private HeldOut() {}

  /**
   * All of them, as the file names them.
   *
   * @return an unmodifiable list
   */
  public static List<Source> sources() {
    return TABLE.sources();
  }

  /**
   * Whether a source is held out.
   *
   * @param source a source, whatever its place
   * @return true if the file names its work
   */
  public static boolean covers(Source source) {
    return sources().stream().anyMatch(held -> held.work().equals(source.work()));
  }

  static Source source(String key) {
    return TABLE.source(key);
  }
}
