package io.github.ringstate.files.provenance;

import io.github.ringstate.files.digest.Digest;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * Which program ran: two builds of one version have different digests.
 *
 * @param version the version in the jar's manifest
 * @param digest what tells the jar from any other: a digest of the names, sizes and checksums
 *     (CRC-32) of all that is in it, libraries included
 */
public record Build(String version, String digest) {

  /** What is said of a program that does not run from its jar. */
  public static final String OUTSIDE = "outside its jar";

  /** Hexadecimal digits that are kept. */
  private static final int LENGTH = 16;

  private static final Build CURRENT = new Build(version(Build.class), digest(Build.class));

  /**
   * The build that runs.
   *
   * @return the version and digest of the jar that this class is in
   */
  public static Build current() {
    return CURRENT;
  }

  private static String version(Class<?> type) {
    @Nullable String version = type.getPackage().getImplementationVersion();
    return version == null ? OUTSIDE : version;
  }

  private static String digest(Class<?> type) {
    @Nullable CodeSource source = type.getProtectionDomain().getCodeSource();
    try {
      if (source != null && source.getLocation() != null) {
        Path jar = Path.of(source.getLocation().toURI());
        if (Files.isRegularFile(jar)) {
          return digest(jar);
        }
      }
    } catch (URISyntaxException | IllegalArgumentException | IOException noFile) {
      // a class that comes from elsewhere than a file
    }
    return OUTSIDE;
  }

  /** The jar's table of contents says it all; nothing is unpacked. */
  static String digest(Path jar) throws IOException {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      String contents =
          zip.stream()
              .map(
                  (ZipEntry entry) ->
                      entry.getName() + ' ' + entry.getSize() + ' ' + entry.getCrc())
              .sorted()
              .collect(Collectors.joining("\n"));
      return Digest.of(contents).substring(0, LENGTH);
    }
  }

  @Override
  public String toString() {
    return "version " + version + ", build " + digest;
  }
}
