package io.github.ringstate.validation.catalogue;

import io.github.ringstate.air.Air;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The standard atmosphere. */
final class AtmosphereChecks {

  private static final Prose TEXT = Prose.of(AtmosphereChecks.class);

  /** Radius of the earth that USSA 1976 uses to turn geometric into geopotential altitude, m. */
  private static final double EARTH_RADIUS = 6_356_766;

  private AtmosphereChecks() {}

  static Section section(Models models) {
    ReferenceTable computed = ReferenceTable.read("standard_atmosphere_computed.csv");
    ReferenceTable printed = ReferenceTable.read("standard_atmosphere_printed.csv");
    double[] geopotential = computed.numbers("geopotential_altitude_m");
    double[] fromGeometric =
        Arrays.stream(printed.numbers("geometric_altitude_m"))
            .map(h -> EARTH_RADIUS * h / (EARTH_RADIUS + h))
            .toArray();
    List<Check> checks = new ArrayList<>();
    column(models, checks, printed, fromGeometric, "temperature_k", "K", Air::temperature);
    column(models, checks, printed, fromGeometric, "pressure_bar", "bar", a -> a.pressure() / 1e5);
    column(models, checks, printed, fromGeometric, "density_kg_m3", "kg/m3", Air::density);
    column(models, checks, computed, geopotential, "temperature_k", "K", Air::temperature);
    column(models, checks, computed, geopotential, "pressure_pa", "Pa", Air::pressure);
    column(models, checks, computed, geopotential, "density_kg_m3", "kg/m3", Air::density);
    return TEXT.section(
        "atmosphere",
        List.of(TEXT.figure("density", () -> plot(models, computed, printed, fromGeometric))),
        checks,
        printed,
        computed);
  }

  private static void column(
      Models models,
      List<Check> checks,
      ReferenceTable table,
      double[] altitude,
      String column,
      String unit,
      ToDoubleFunction<Air> quantity) {
    boolean printed = altitude.length == 5;
    String stem = column.substring(0, column.indexOf('_'));
    checks.addAll(
        new TableCheck(
                stem + (printed ? ", printed table" : ", defining constants"),
                unit,
                printed ? Obtained.PRINTED : Obtained.COMPUTED,
                Sources.ATMOSPHERE)
            .of(
                table,
                column,
                Arrays.stream(altitude).map(h -> quantity.applyAsDouble(models.air(h))).toArray()));
  }

  private static Graph plot(
      Models models, ReferenceTable computed, ReferenceTable printed, double[] fromGeometric) {
    return Graph.of("geopotential altitude, m", "density, kg/m3")
        .x(-200, 6200)
        .y(0.6, 1.3)
        .curve("library", Pens.SOLID, 0, 6000, h -> models.air(h).density())
        .points(
            "computed",
            Pens.CIRCLE,
            computed.numbers("geopotential_altitude_m"),
            computed.numbers("density_kg_m3"))
        .points("printed", Pens.SQUARE, fromGeometric, printed.numbers("density_kg_m3"));
  }
}
