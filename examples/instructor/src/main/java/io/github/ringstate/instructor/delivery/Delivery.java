package io.github.ringstate.instructor.delivery;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.ReportWriter;
import io.github.ringstate.files.whole.WholeFile;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.function.Supplier;

/** Takes a report to where the user wants it. */
public abstract class Delivery {

  private final Supplier<ReportWriter> writer;

  Delivery(Supplier<ReportWriter> writer) {
    this.writer = writer;
  }

  /**
   * To a stream that stays open.
   *
   * @param writer makes the writer, once there is something to write
   * @param out the stream
   * @return the way out
   */
  public static Delivery to(Supplier<ReportWriter> writer, OutputStream out) {
    return new ToTerminal(writer, out);
  }

  /**
   * To a file that is replaced as a whole.
   *
   * @param writer makes the writer, once there is something to write
   * @param option where the file was named
   * @param file the file, as the user named it
   * @return the way out
   * @throws UserError if the file is no place to write to
   */
  public static Delivery toFile(Supplier<ReportWriter> writer, String option, String file) {
    return new ToFile(writer, WholeFile.named(option, file));
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
   * @param out the stream
   * @throws IOException if the stream takes no more
   */
  final void write(Report report, OutputStream out) throws IOException {
    writer.get().write(report, out);
  }

  private static final class ToTerminal extends Delivery {

    private final OutputStream out;

    ToTerminal(Supplier<ReportWriter> writer, OutputStream out) {
      super(writer);
      this.out = out;
    }

    @Override
    public void deliver(Report report) {
      send(content -> write(report, content), out);
    }
  }

  private static final class ToFile extends Delivery {

    private final WholeFile file;

    ToFile(Supplier<ReportWriter> writer, WholeFile file) {
      super(writer);
      this.file = file;
    }

    @Override
    public void deliver(Report report) {
      file.replace(out -> write(report, out));
    }
  }
}
