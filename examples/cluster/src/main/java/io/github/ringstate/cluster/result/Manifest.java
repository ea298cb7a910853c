package io.github.ringstate.cluster.result;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.cluster.portion.Cut;
import io.github.ringstate.files.sweep.SweepFile;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a folder is filled with. Runs that agree in all of it write the same bits.
 *
 * @param version the version of this program
 * @param digest the digest of the sweep's text
 * @param cut how the sweep is cut
 */
public record Manifest(String version, String digest, Cut cut) {

  private static final String TITLE = "ringstate sweep on a cluster";
  private static final String VERSION = "version ";
  private static final String POINTS = "points ";
  private static final String PORTION = "points of a portion ";
  private static final String DIGEST = "digest of SPEC ";

  /**
   * The manifest of a sweep.
   *
   * @param file the sweep
   * @param cut how it is cut
   * @return the manifest
   */
  public static Manifest of(SweepFile file, Cut cut) {
    @Nullable String version = Manifest.class.getPackage().getImplementationVersion();
    return new Manifest(version == null ? "outside its jar" : version, file.digest(), cut);
  }

  List<String> lines() {
    return List.of(
        TITLE, VERSION + version, POINTS + cut.points(), PORTION + cut.size(), DIGEST + digest);
  }

  /** Reads a manifest; empty if it is none. */
  static Optional<Manifest> read(List<String> lines) {
    if (lines.size() != 5 || !lines.get(0).equals(TITLE)) {
      return Optional.empty();
    }
    try {
      Manifest read =
          new Manifest(
              after(VERSION, lines.get(1)),
              after(DIGEST, lines.get(4)),
              new Cut(
                  Long.parseLong(after(POINTS, lines.get(2))),
                  Integer.parseInt(after(PORTION, lines.get(3)))));
      return read.lines().equals(lines) ? Optional.of(read) : Optional.empty();
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
