package io.github.ringstate.cluster.result;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.cluster.portion.Cut;
import io.github.ringstate.files.provenance.Build;
import io.github.ringstate.files.sweep.SweepFile;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What a folder is filled with. Runs that agree in all of it write the same bits.
 *
 * @param version the version and build of this program
 * @param digests a line for each digest of what the rows depend on
 * @param cut how the sweep is cut
 */
public record Manifest(String version, List<String> digests, Cut cut) {

  private static final String TITLE = "ringstate sweep on a cluster";
  private static final String VERSION = "version ";
  private static final String POINTS = "points ";
  private static final String PORTION = "points of a portion ";
  private static final String DIGEST = "digest of ";
  private static final int BEFORE_DIGESTS = 4;

  /** Copies the list. */
  public Manifest {
    digests = List.copyOf(digests);
  }

  /**
   * The manifest of a sweep.
   *
   * @param file the sweep
   * @param cut how it is cut
   * @return the manifest
   */
  public static Manifest of(SweepFile file, Cut cut) {
    Build build = Build.current();
    return new Manifest(build.version() + ", build " + build.digest(), file.digests(), cut);
  }

  List<String> lines() {
    return Stream.concat(
            Stream.of(TITLE, VERSION + version, POINTS + cut.points(), PORTION + cut.size()),
            digests.stream())
        .toList();
  }

  /** Reads a manifest; empty if it is none. */
  static Optional<Manifest> read(List<String> lines) {
    if (lines.size() <= BEFORE_DIGESTS || !lines.get(0).equals(TITLE)) {
      return Optional.empty();
    }
    try {
      Manifest read =
          new Manifest(
              after(VERSION, lines.get(1)),
              lines.subList(BEFORE_DIGESTS, lines.size()),
              new Cut(
                  Long.parseLong(after(POINTS, lines.get(2))),
                  Integer.parseInt(after(PORTION, lines.get(3)))));
      boolean digests = read.digests().stream().allMatch(line -> line.startsWith(DIGEST));
      return digests && read.lines().equals(lines) ? Optional.of(read) : Optional.empty();
    } catch (IllegalArgumentException damaged) {
      return Optional.empty();
    }
  }

  private static String after(String beginning, String line) {
    return line.startsWith(beginning) ? line.substring(beginning.length()) : "";
  }

  /**
   * What tells the files of this run from those of any other.
   *
   * @return eight hexadecimal digits
   */
  String fingerprint() {
    return UUID.nameUUIDFromBytes(String.join("\n", lines()).getBytes(UTF_8))
        .toString()
        .substring(0, 8);
  }
}
