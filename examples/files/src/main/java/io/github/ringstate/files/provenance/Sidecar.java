package io.github.ringstate.files.provenance;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.files.digest.Digest;
import io.github.ringstate.files.report.JsonWriter;
import io.github.ringstate.files.whole.WholeFile;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The provenance of a file that has no place for it, in a file beside it. It holds the digest of
 * that file, so that one which was changed since, or another of the same name, is known as such.
 */
public final class Sidecar {

  private static final String ENDING = ".provenance.json";

  private Sidecar() {}

  /**
   * The name of the file beside another.
   *
   * @param name the name of the other
   * @return its name with an ending more
   */
  public static String name(String name) {
    return name + ENDING;
  }

  /**
   * Writes provenance beside a file that is there.
   *
   * @param file the file
   * @param option where it was named
   * @param name its name, as the user gave it
   * @param provenance where it came from
   */
  public static void write(WholeFile file, String option, String name, Provenance provenance) {
    try {
      String digest = Digest.of(file.place());
      String last = String.valueOf(Path.of(name).getFileName());
      WholeFile.named(option, beside(name, file))
          .replace(out -> write(last, digest, provenance, out));
    } catch (IOException failed) {
      throw file.refused(failed);
    }
  }

  /** Beside what a link leads to lies what is beside that. */
  private static String beside(String name, WholeFile file) {
    return Files.isSymbolicLink(Path.of(name)) ? name(file.place().toString()) : name(name);
  }

  /**
   * Writes a sidecar to a stream.
   *
   * @param last the name of the file without its folder
   * @param digest the digest of the file
   * @param provenance where it came from
   * @param out where to
   * @throws IOException if the stream takes no more
   */
  public static void write(String last, String digest, Provenance provenance, OutputStream out)
      throws IOException {
    Writer writer = new OutputStreamWriter(out, UTF_8);
    try (JsonGenerator json = JsonWriter.generator(writer)) {
      json.writeStartObject();
      json.writeStringField("file", last);
      json.writeStringField("sha256", digest);
      json.writeFieldName(ProvenanceJson.NAME);
      ProvenanceJson.write(provenance, json);
      json.writeEndObject();
    }
    writer.write("\n");
    writer.flush();
  }

  /**
   * Reads the sidecar of a file.
   *
   * @param file the file
   * @return where the file came from; empty if there is no sidecar, or it is that of another file
   * @throws IOException if a file cannot be read
   */
  public static Optional<Provenance> read(Path file) throws IOException {
    Path beside = Path.of(name(file.toString()));
    if (!Files.isRegularFile(beside)) {
      return Optional.empty();
    }
    String text = Files.readString(beside);
    JsonNode tree = ProvenanceJson.MAPPER.readTree(text);
    return tree.path("sha256").asText().equals(Digest.of(file))
        ? ProvenanceJson.read(text)
        : Optional.empty();
  }
}
