package io.github.ringstate.files.sweep;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.TextFile;
import io.github.ringstate.study.sweep.Sweep;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;

/**
 * A sweep in a file.
 *
 * @param name the file, as the user named it
 * @param text its content
 * @param sweep what it says
 * @param notices what to tell the user of the file, one sentence each; none if all is well
 */
public record SweepFile(String name, String text, Sweep sweep, List<String> notices) {

  /** More than any sweep fills, comments and long lists included. */
  private static final int LARGEST = 1 << 20;

  /** Copies the list. */
  public SweepFile {
    notices = List.copyOf(notices);
  }

  /**
   * Reads a sweep.
   *
   * @param name the file, as the user named it
   * @return the sweep
   * @throws UserError if the file cannot be read or holds a bad value
   */
  public static SweepFile read(String name) {
    return parse(name, TextFile.read(name, "a sweep", LARGEST));
  }

  /**
   * Reads a sweep from its text; touches no file, so it can be done wherever the text has come to.
   *
   * @param name a name for messages
   * @param text the content of the file
   * @return the sweep
   * @throws UserError if the text is no TOML or holds a bad value
   */
  public static SweepFile parse(String name, String text) {
    return SweepReader.read(name, text);
  }

  /**
   * What tells this text from any other.
   *
   * @return the SHA-256 digest of the text in UTF-8, as hexadecimal digits
   */
  public String digest() {
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible); // every Java platform has it
    }
  }

  /**
   * A sweep that explains itself.
   *
   * @return the text of a file
   */
  public static String example() {
    try (InputStream in = SweepFile.class.getResourceAsStream("sweep-example.toml")) {
      return new String(Objects.requireNonNull(in, "sweep-example.toml").readAllBytes(), UTF_8);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible); // it is in the jar
    }
  }
}
