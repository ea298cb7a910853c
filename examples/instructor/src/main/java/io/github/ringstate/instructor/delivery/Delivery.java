package io.github.ringstate.instructor.delivery;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.instructor.refusal.Refusal;
import io.github.ringstate.instructor.report.Format;
import io.github.ringstate.instructor.report.Report;
import io.github.ringstate.instructor.report.ReportWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.util.Locale;

/** Takes a report to where the user wants it, in UTF-8. */
public abstract class Delivery {

  private final Format format;

  Delivery(Format format) {
    this.format = format;
  }

  /**
   * To a stream that stays open.
   *
   * @param format the format
   * @param out the stream
   * @return the way out
   */
  public static Delivery to(Format format, OutputStream out) {
    return new ToTerminal(format, out);
  }

  /**
   * To a file that is replaced as a whole.
   *
   * @param format the format
   * @param option where the file was named
   * @param file the file, as the user named it
   * @return the way out
   * @throws Refusal if the file is no place to write to
   */
  public static Delivery toFile(Format format, String option, String file) {
    return new ToFile(format, WholeFile.named(option, file));
  }

  /**
   * Delivers a report.
   *
   * @param report the report
   * @throws Refusal if it cannot be written
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
    ReportWriter writer = format.writer();
    Writer characters = new OutputStreamWriter(out, UTF_8);
    writer.write(report, characters);
    characters.flush();
  }

  private static final class ToTerminal extends Delivery {

    private final OutputStream out;

    ToTerminal(Format format, OutputStream out) {
      super(format);
      this.out = out;
    }

    @Override
    public void deliver(Report report) {
      try {
        write(report, out);
        out.flush();
      } catch (IOException failed) {
        if (!readerIsGone(failed)) {
          throw Refusal.file(
              "standard output", "cannot be written: " + failed.getMessage(), failed);
        }
      }
    }

    /** A reader that has seen enough, for instance {@code head}, is no error. */
    private static boolean readerIsGone(IOException failed) {
      return String.valueOf(failed.getMessage()).toLowerCase(Locale.ROOT).contains("broken pipe");
    }
  }

  private static final class ToFile extends Delivery {

    private final WholeFile file;

    ToFile(Format format, WholeFile file) {
      super(format);
      this.file = file;
    }

    @Override
    public void deliver(Report report) {
      file.replace(out -> write(report, out));
    }
  }
}
