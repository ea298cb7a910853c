package io.github.ringstate.instructor.rerun;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.ProvenanceJson;
import io.github.ringstate.files.provenance.Sidecar;
import io.github.ringstate.files.row.ParquetFooter;
import io.github.ringstate.files.toml.TextFile;
import io.github.ringstate.sheets.page.ProvenanceMark;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Finds the provenance that a file keeps, whatever its format, or that lies beside it. */
final class KeptProvenance {

  private static final int MAGIC = 4;

  private KeptProvenance() {}

  /**
   * Reads it.
   *
   * @param name the file, as the user named it
   * @return where the file came from
   * @throws UserError if the file cannot be read, or says nothing of it
   */
  static Provenance read(String name) {
    try {
      Path file = TextFile.named(name);
      Optional<Provenance> beside = Sidecar.read(file);
      return beside
          .or(() -> kept(name, file))
          .orElseThrow(
              () ->
                  UserError.file(
                      name,
                      "cannot be run again: it keeps no provenance, and "
                          + UserError.quoted(Sidecar.name(name))
                          + " is not there or that of another content",
                      null));
    } catch (IOException failed) {
      throw TextFile.refused(name, failed);
    }
  }

  private static Optional<Provenance> kept(String name, Path file) {
    try {
      return text(file).flatMap(ProvenanceJson::read);
    } catch (IOException failed) {
      throw TextFile.refused(name, failed);
    }
  }

  private static Optional<String> text(Path file) throws IOException {
    String magic;
    try (InputStream in = Files.newInputStream(file)) {
      magic = new String(in.readNBytes(MAGIC), ISO_8859_1);
    }
    if (magic.equals("PAR1")) {
      return ParquetFooter.read(file, ProvenanceJson.NAME);
    }
    byte[] bytes = Files.readAllBytes(file);
    if (magic.equals("%PDF")) {
      return ProvenanceMark.inPdf(bytes);
    }
    if (magic.endsWith("PNG")) {
      return ProvenanceMark.inPng(bytes);
    }
    String text = new String(bytes, UTF_8);
    return text.stripLeading().startsWith("{") ? Optional.of(text) : ProvenanceMark.inMarkup(text);
  }
}
