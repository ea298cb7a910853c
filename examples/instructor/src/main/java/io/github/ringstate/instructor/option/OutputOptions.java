package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.delivery.Delivery;
import java.io.OutputStream;
import java.util.List;
import picocli.CommandLine.Option;

/** In what format a report without a picture, and without units of its own, goes where. */
public final class OutputOptions extends Destination {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv or json. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

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
    return delivery(
        format,
        List.of(Format.TEXT, Format.CSV, Format.JSON),
        (chosen, json) -> Writers.plain(chosen, UnitSystem.AVIATION, json),
        terminal);
  }
}
