package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.report.Format;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.ReportWriter;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.delivery.Recipient;
import io.github.ringstate.instructor.delivery.StandardStream;
import io.github.ringstate.instructor.origin.Origin;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a report goes. */
public abstract class Destination {

  /** Formats that have a place for where a file comes from. */
  private static final Set<Format> KEEPING =
      EnumSet.of(Format.JSON, Format.PARQUET, Format.HTML, Format.PDF, Format.SVG, Format.PNG);

  private static final Set<Format> BINARY = Set.of(Format.PARQUET, Format.PDF, Format.PNG);

  @Option(
      names = Origin.OUTPUT,
      paramLabel = "FILE",
      description =
          "Write to this file, whole or not at all, in place of the terminal. Its folder must"
              + " exist; an old file is replaced."
              + " Where a text or CSV file came from goes to FILE.provenance.json.")
  private @Nullable String output;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  Destination() {}

  /**
   * The way out for a report.
   *
   * @param format the format's name, as the user gave it
   * @param formats the formats that there are
   * @param writer makes the writer for one of them, with the provenance of the report as JSON
   * @param terminal where the report goes if no file is given
   * @return the way out
   */
  final Delivery delivery(
      String format,
      List<Format> formats,
      BiFunction<Format, String, ReportWriter> writer,
      OutputStream terminal) {
    Format chosen = new Choice<>("--format", formats, Format::label).one(format);
    refuseNameOfAnother(chosen, formats);
    Optional<Recipient> recipient = Recipient.of(spec);
    if (recipient.isPresent()) {
      return Delivery.to(recipient.get());
    }
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
    Origin origin = Origin.of(spec);
    Delivery.Writing writing =
        new Delivery.Writing(
            json -> writer.apply(chosen, json),
            report -> origin.provenance(chosen.label(), report.settings(), columns(report)),
            KEEPING.contains(chosen));
    return output == null
        ? Delivery.to(writing, terminal)
        : Delivery.toFile(writing, Origin.OUTPUT, output);
  }

  /** A file whose name promises another format than it gets is opened by the wrong program. */
  private void refuseNameOfAnother(Format chosen, List<Format> formats) {
    if (output == null) {
      return;
    }
    String name = output.strip().toLowerCase(Locale.ROOT);
    for (Format other : Format.values()) {
      String ending = "." + other.label();
      if (other != chosen && name.endsWith(ending)) {
        throw UserError.option(
            Origin.OUTPUT,
            output,
            (formats.contains(other) ? "with --format " + other.label() + ", or " : "")
                + "a name that does not end in "
                + ending
                + " for "
                + chosen.label());
      }
    }
  }

  private static Set<String> columns(Report report) {
    Set<String> columns = new LinkedHashSet<>(report.table().header());
    report.tables().values().forEach(table -> columns.addAll(table.header()));
    return columns;
  }
}
