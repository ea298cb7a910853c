package io.github.ringstate.instructor.option;

import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.report.Format;
import java.io.OutputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** In what format the report goes where. */
public final class OutputOptions {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv or json. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  @Option(
      names = "--output",
      paramLabel = "FILE",
      description =
          "Write to this file, whole or not at all, in place of the terminal. Its folder must"
              + " exist; an old file is replaced.")
  private @Nullable String output;

  /** Made by picocli. */
  public OutputOptions() {}

  /**
   * The way out for the report; asked for before anything is computed, so that a wrong option costs
   * no time.
   *
   * @param terminal where the report goes if no file is given
   * @return the way out
   */
  public Delivery delivery(OutputStream terminal) {
    Format chosen = new Choice<>("--format", List.of(Format.values()), Format::label).one(format);
    return output == null
        ? Delivery.to(chosen, terminal)
        : Delivery.toFile(chosen, "--output", output);
  }
}
