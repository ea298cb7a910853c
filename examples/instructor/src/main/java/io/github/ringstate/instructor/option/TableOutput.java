package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Format;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.delivery.Delivery;
import java.io.OutputStream;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In what format and units a report without a picture goes where. */
public final class TableOutput extends Destination {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv or json. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  @Mixin private final UnitsOption units = new UnitsOption();

  /** Made by picocli. */
  public TableOutput() {}

  /**
   * The way out for the report; asked for before anything is computed, so that a wrong option costs
   * no time.
   *
   * @param terminal where the report goes if no file is given
   * @return the way out
   */
  public Delivery delivery(OutputStream terminal) {
    UnitSystem chosen = units.units();
    return delivery(
        format,
        List.of(Format.TEXT, Format.CSV, Format.JSON),
        (one, provenance) -> Writers.plain(one, chosen, provenance),
        terminal);
  }
}
