package io.github.ringstate.instructor.delivery;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.ProvenanceJson;
import io.github.ringstate.files.provenance.Sidecar;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.ReportWriter;
import io.github.ringstate.files.whole.WholeFile;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;

/** Ways of a report to where the user wants it. */
public final class Delivery {

  /**
   * How reports are written.
   *
   * @param writer makes the writer, once there is something to write, with the provenance as JSON
   * @param provenance where a report comes from
   * @param keeps whether what is written has a place for its provenance; a file that has none gets
   *     a file beside it
   */
  public record Writing(
      Function<String, ReportWriter> writer,
      Function<Report, Provenance> provenance,
      boolean keeps) {}

  private Delivery() {}

  private static Recipient of(
      Writing writing, Consumer<WholeFile.Content> place, Consumer<Provenance> beside) {
    return report -> {
      Provenance provenance = writing.provenance().apply(report);
      String json = writing.keeps() ? ProvenanceJson.text(provenance) : "";
      place.accept(out -> writing.writer().apply(json).write(report, out));
      beside.accept(provenance);
    };
  }

  /**
   * To a stream that stays open.
   *
   * @param writing how reports are written
   * @param out the stream
   * @return the way out
   */
  public static Recipient to(Writing writing, OutputStream out) {
    return of(writing, content -> send(content, out), provenance -> {});
  }

  /**
   * To a file that is replaced as a whole.
   *
   * @param writing how reports are written
   * @param option where the file was named
   * @param file the file, as the user named it
   * @return the way out
   * @throws UserError if the file is no place to write to
   */
  public static Recipient toFile(Writing writing, String option, String file) {
    WholeFile whole = WholeFile.named(option, file);
    return of(
        writing,
        whole::replace,
        provenance -> {
          if (!writing.keeps()) {
            Sidecar.write(whole, option, file, provenance);
          }
        });
  }

  /**
   * Prints what is no report, such as a help, to a stream that stays open.
   *
   * @param text the text
   * @param out the stream
   * @throws UserError if it cannot be written
   */
  public static void print(String text, OutputStream out) {
    send(content -> content.write(text.getBytes(UTF_8)), out);
  }

  private static void send(WholeFile.Content content, OutputStream out) {
    try {
      content.writeTo(out);
      out.flush();
    } catch (IOException failed) {
      if (!readerIsGone(failed)) {
        throw UserError.file(
            "standard output", "cannot be written: " + failed.getMessage(), failed);
      }
    }
  }

  /** A reader that has seen enough, for instance {@code head}, is no error. */
  private static boolean readerIsGone(IOException failed) {
    return String.valueOf(failed.getMessage()).toLowerCase(Locale.ROOT).contains("broken pipe");
  }
}
