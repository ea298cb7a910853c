package io.github.ringstate.files.provenance;

import io.github.ringstate.files.digest.Digest;
import java.util.Optional;

/**
 * Something that a command read.
 *
 * @param name the file, as the user named it
 * @param digest its SHA-256 digest, as hexadecimal digits
 * @param text its content; empty if only the digest is kept
 */
public record Source(String name, String digest, Optional<String> text) {

  /**
   * A text that is kept whole.
   *
   * @param name the file, as the user named it
   * @param text its content
   * @return the source
   */
  public static Source of(String name, String text) {
    return new Source(name, Digest.of(text), Optional.of(text));
  }
}
