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
import java.util.function.Function;

/** Takes a report to where the user wants it. */
public abstract class Delivery {

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

  private final Writing writing;

  Delivery(Writing writing) {
    this.writing = writing;
  }

  /**
   * To a stream that stays open.
   *
   * @param writing how reports are written
   * @param out the stream
   * @return the way out
   */
  public static Delivery to(Writing writing, OutputStream out) {
    return new ToTerminal(writing, out);
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
  public static Delivery toFile(Writing writing, String option, String file) {
    return new ToFile(writing, option, file);
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

  /**
   * Delivers a report.
   *
   * @param report the report
   * @throws UserError if it cannot be written
   */
  public abstract void deliver(Report report);

  /**
   * Writes a report to a stream and leaves that open.
   *
   * @param report the report
   * @param provenance where it comes from
   * @param out the stream
   * @throws IOException if the stream takes no more
   */
  final void write(Report report, Provenance provenance, OutputStream out) throws IOException {
    String json = writing.keeps() ? ProvenanceJson.text(provenance) : "";
    writing.writer().apply(json).write(report, out);
  }

  /** Where a report comes from. */
  final Provenance provenance(Report report) {
    return writing.provenance().apply(report);
  }

  private static final class ToTerminal extends Delivery {

    private final OutputStream out;

    ToTerminal(Writing writing, OutputStream out) {
      super(writing);
      this.out = out;
    }

    @Override
    public void deliver(Report report) {
      send(content -> write(report, provenance(report), content), out);
    }
  }

  private static final class ToFile extends Delivery {

    private final boolean keeps;
    private final String option;
    private final String name;
    private final WholeFile file;

    ToFile(Writing writing, String option, String name) {
      super(writing);
      this.option = option;
      this.name = name;
      keeps = writing.keeps();
      file = WholeFile.named(option, name);
    }

    @Override
    public void deliver(Report report) {
      Provenance provenance = provenance(report);
      file.replace(out -> write(report, provenance, out));
      if (!keeps) {
        Sidecar.write(file, option, name, provenance);
      }
    }
  }
}
