package io.github.ringstate.instructor.delivery;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.ReportWriter;
import io.github.ringstate.files.whole.WholeFile;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Takes a report to where the user wants it. */
public final class Delivery {

  private final Supplier<ReportWriter> writer;
  private final Consumer<WholeFile.Content> place;

  private Delivery(Supplier<ReportWriter> writer, Consumer<WholeFile.Content> place) {
    this.writer = writer;
    this.place = place;
  }

  /**
   * To a stream that stays open.
   *
   * @param writer makes the writer, once there is something to write
   * @param out the stream
   * @return the way out
   */
  public static Delivery to(Supplier<ReportWriter> writer, OutputStream out) {
    return new Delivery(writer, content -> send(content, out));
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
    return new Delivery(writer, WholeFile.named(option, file)::replace);
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
  public void deliver(Report report) {
    place.accept(out -> writer.get().write(report, out));
  }
}
