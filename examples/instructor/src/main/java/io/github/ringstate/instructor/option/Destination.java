package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.report.Format;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.delivery.Recipient;
import io.github.ringstate.instructor.delivery.StandardStream;
import io.github.ringstate.instructor.origin.Origin;
import java.io.FileOutputStream;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
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

  private final List<Format> formats;

  /**
   * Creates it.
   *
   * @param formats the formats that there are
   */
  Destination(Format... formats) {
    this.formats = List.of(formats);
  }

  /** The format's name, as the user gave it. */
  abstract String format();

  /** The writers by the other options, which are refused here if they are wrong. */
  abstract Writers writers();

  /**
   * Whether a page or a picture is wanted.
   *
   * @return false for text and data
   */
  public final boolean isDrawn() {
    return Stream.of(Format.HTML, Format.PDF, Format.SVG, Format.PNG)
        .anyMatch(drawn -> drawn.label().equals(format().strip()));
  }

  /**
   * Delivers a report.
   *
   * @param report makes the report; asked after the options, so that a wrong one costs no time
   * @throws UserError if an option is wrong, or the report cannot be written
   */
  public final void deliver(Supplier<Report> report) {
    Recipient recipient = recipient();
    recipient.take(report.get());
  }

  private Recipient recipient() {
    Writers writers = writers();
    Format chosen = new Choice<>("--format", formats, Format::label).one(format());
    refuseNameOfAnother(chosen);
    Recipient.Holder tool = Recipient.Holder.of(spec);
    if (tool.recipient().isPresent()) {
      return tool.recipient().get();
    }
    if (output == null
        && BINARY.contains(chosen)
        && tool.terminal() instanceof FileOutputStream
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
            json -> writers.of(chosen, json),
            report -> origin.provenance(chosen.label(), report.settings(), columns(report)),
            KEEPING.contains(chosen));
    return output == null
        ? Delivery.to(writing, tool.terminal())
        : Delivery.toFile(writing, Origin.OUTPUT, output);
  }

  /** A file whose name promises another format than it gets is opened by the wrong program. */
  private void refuseNameOfAnother(Format chosen) {
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
