package io.github.ringstate.files.sweep;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.digest.Digest;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.extension.Extensions;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.toml.Texts;
import io.github.ringstate.study.sweep.Sweep;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A sweep in a file.
 *
 * @param name the file, as the user named it
 * @param text its content
 * @param crafts the texts of the craft files that it names, by the names of those files
 * @param extensions what it is flown with beyond what is built in
 * @param sweep what it says
 * @param notices what to tell the user of the file, one sentence each; none if all is well
 */
public record SweepFile(
    String name,
    String text,
    Map<String, String> crafts,
    Extensions extensions,
    Sweep sweep,
    List<String> notices) {

  /** More than any sweep fills, comments and long lists included. */
  private static final int LARGEST = 1 << 20;

  /** Copies the lists. */
  public SweepFile {
    crafts = Collections.unmodifiableMap(new LinkedHashMap<>(crafts));
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
    return read(name, Extensions.NONE, Texts.FILES);
  }

  /**
   * Reads a sweep.
   *
   * @param name the file, as the user named it
   * @param extensions what it may name beyond what is built in
   * @param texts where its text and those of craft files come from
   * @return the sweep
   * @throws UserError if a file cannot be read or holds a bad value
   */
  public static SweepFile read(String name, Extensions extensions, Texts texts) {
    return SweepReader.read(name, texts.read(name, "a sweep", LARGEST), extensions, texts);
  }

  /**
   * Reads a sweep of what is built in from its text.
   *
   * @param name a name for messages
   * @param text the content of the file
   * @return the sweep
   * @throws UserError if the text is no TOML or holds a bad value
   */
  public static SweepFile parse(String name, String text) {
    return SweepReader.read(name, text, Extensions.NONE, Texts.FILES);
  }

  /**
   * What tells this sweep from any other: all that its rows depend on beside the program.
   *
   * @return a line for the text, for each craft file and for each extension, with its SHA-256
   *     digest
   */
  public List<String> digests() {
    List<String> lines = new ArrayList<>();
    lines.add("digest of SPEC " + Digest.of(text));
    crafts.forEach(
        (file, craft) ->
            lines.add("digest of craft " + UserError.quoted(file) + " " + Digest.of(craft)));
    extensions.jars().forEach(jar -> lines.add("digest of extension " + jar.digest()));
    return lines;
  }

  /**
   * What the sweep is flown with, for the provenance of its rows.
   *
   * @return what the file sets, and every number that it leaves as it is, by keys with their unit
   */
  public Map<String, Cell> settings() {
    return SweepSettings.of(this);
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
