package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.report.Format;
import io.github.ringstate.files.report.ReportWriter;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.delivery.StandardStream;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a report goes. */
public abstract class Destination {

  private static final Set<Format> BINARY = Set.of(Format.PDF, Format.PNG);

  @Option(
      names = "--output",
      paramLabel = "FILE",
      description =
          "Write to this file, whole or not at all, in place of the terminal. Its folder must"
              + " exist; an old file is replaced.")
  private @Nullable String output;

  Destination() {}

  /**
   * The way out for a report.
   *
   * @param format the format's name, as the user gave it
   * @param formats the formats that there are
   * @param writer makes the writer for one of them
   * @param terminal where the report goes if no file is given
   * @return the way out
   */
  final Delivery delivery(
      String format,
      List<Format> formats,
      Function<Format, ReportWriter> writer,
      OutputStream terminal) {
    Format chosen = new Choice<>("--format", formats, Format::label).one(format);
    if (output == null
        && BINARY.contains(chosen)
        && terminal instanceof FileOutputStream
        && StandardStream.OUTPUT.isTerminal()) {
      throw UserError.usage(
          "--format "
              + chosen.label()
              + " is no text for a terminal"
              + UserError.ALLOWED
              + "with --output FILE, or into a file or a pipe");
    }
    return output == null
        ? Delivery.to(() -> writer.apply(chosen), terminal)
        : Delivery.toFile(() -> writer.apply(chosen), "--output", output);
  }
}
