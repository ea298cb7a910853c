package io.github.ringstate.cluster.result;

import java.io.Serializable;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.hadoop.fs.Path;

/**
 * Where the files of portions go.
 *
 * @param folder the folder, with its file system
 * @param fingerprint the fingerprint of what is flown
 */
public record PortionPlaces(String folder, String fingerprint) implements Serializable {

  private static final Pattern NAME = Pattern.compile("portion-([0-9]+)-([0-9a-f]+)\\.parquet");

  /**
   * The place of a portion.
   *
   * @param number the number of the portion
   * @return the path of its file
   */
  public Path place(int number) {
    return new Path(
        folder, String.format(Locale.ROOT, "portion-%05d-%s.parquet", number, fingerprint));
  }

  /**
   * The names of all files of this run's portions, and of no draft.
   *
   * @return a pattern as Hadoop has it
   */
  public String names() {
    return "portion-*-" + fingerprint + ".parquet";
  }

  /** The number of the portion whose file has a name; empty if it is no such file. */
  OptionalInt number(String name) {
    Matcher matcher = NAME.matcher(name);
    return matcher.matches() && matcher.group(2).equals(fingerprint)
        ? OptionalInt.of(Integer.parseInt(matcher.group(1)))
        : OptionalInt.empty();
  }
}
