package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.Autorotation;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The fits to measured induced velocity in vertical descent. */
final class DescentFits {

  static final Prose TEXT = Prose.of(DescentFits.class);

  private DescentFits() {}

  static Section section(Models models) {
    InflowModel ideal = models.quartic(1);
    ReferenceTable table = ReferenceTable.read("descent_fits.csv");
    double[] z = table.numbers("axial_over_vh");
    List<List<Check>> checks =
        List.of(
            fit("quartic fit, k = 1", Sources.LEISHMAN).of(table, "quartic_k1", along(ideal, z)),
            fit("quartic fit, k = 1.15", Sources.LEISHMAN)
                .of(table, "quartic_k1.15", along(models.quartic(1.15), z)),
            fit("two-segment fit, k = 1", Sources.YOUNG)
                .of(table, "two_segment_k1", along(models.twoSegment(1), z)),
            fit("cubic bridge on the axis", Sources.JOHNSON_RING)
                .of(table, "cubic_bridge", along(models.cubic(), z)),
            List.of(
                autorotation("quartic fit, k = 1", Sources.LEISHMAN)
                    .near(-1.7766, 5e-5, autorotation(ideal), "Four decimals computed."),
                autorotation("two-segment fit, k = 1", Sources.YOUNG)
                    .near(-1.75, 1e-12, autorotation(models.twoSegment(1)), "-7/4 exactly."),
                autorotation("two-segment fit, k = 1.15", Sources.YOUNG)
                    .near(
                        -7 * 1.15 / (1 + 3 * 1.15),
                        1e-12,
                        autorotation(models.twoSegment(1.15)),
                        "-7 k / (1 + 3 k), and the root finder's 1e-13."),
                autorotation("cubic bridge", Sources.JOHNSON_RING)
                    .near(
                        -Math.sqrt((1.991 - 1) / 0.373),
                        1e-12,
                        autorotation(models.cubic()),
                        "-sqrt(0.991 / 0.373), and the root finder's 1e-13."),
                slope("quartic fit: least heave slope in descent", Sources.LEISHMAN)
                    .near(
                        0.08,
                        0.005,
                        leastSlope(ideal),
                        "Computed from the formula as about 0.08: positive, so the fit has no fold and no"
                            + " runaway."),
                slope("quartic fit: heave slope in hover", Sources.LEISHMAN)
                    .near(
                        -0.125,
                        1e-15,
                        ideal.slope(0, 0),
                        "1 - 1.125, rounding only; a trait of the fit."),
                slope("two-segment fit: heave slope above z = -1.5, k = 1.15", Sources.YOUNG)
                    .near(-0.15, 1e-15, models.twoSegment(1.15).slope(0, -1), "1 - k, rounding.")),
            edges(models),
            MeasuredDescent.checks(models),
            LeastThrust.checks(models));
    return TEXT.section(
        "descent-fits",
        List.of(
            TEXT.figure("fits", () -> plot(models, table)),
            TEXT.figure("fit-slopes", () -> slopes(models)),
            MeasuredDescent.figure(models)),
        checks.stream().flatMap(List::stream).toList(),
        table);
  }

  /** The cubic and momentum theory on either side of the ellipse where they meet. */
  private static List<Check> edges(Models models) {
    ReferenceTable edge = ReferenceTable.read("cubic_edge.csv");
    double[] inside = onEdge(models, edge, 1 - 1e-9);
    double[] outside = onEdge(models, edge, 1 + 1e-9);
    double[] angles = Grid.spaced(0, Math.PI, 181);
    double upper = 0;
    double lower = 0;
    for (double angle : angles) {
      double x = Math.sin(angle) / Math.sqrt(1.5);
      double z = -1.5 + 0.5 * Math.cos(angle);
      double jump = Math.abs(around(models, x, z, 1 - 1e-9) - around(models, x, z, 1 + 1e-9));
      if (z > -1.35) {
        upper = Math.max(upper, jump);
      } else {
        lower = Math.max(lower, jump);
      }
    }
    return Stream.of(
            fit("cubic bridge just inside its ellipse", Sources.JOHNSON_RING)
                .of(edge, "cubic_over_vh", inside),
            fit("cubic bridge just outside its ellipse", Sources.JOHNSON_RING)
                .of(edge, "momentum_over_vh", outside),
            List.of(
                jump("above z = -1.35")
                    .atMost(0.005, upper, "Half a per cent of the hover induced velocity."),
                jump("below z = -1.35")
                    .atMost(0.005, lower, "Half a per cent of the hover induced velocity.")
                    .butDiffers(0.04, 0.065, TEXT.say("edge-differs"))))
        .flatMap(List::stream)
        .toList();
  }

  private static double[] onEdge(Models models, ReferenceTable edge, double scale) {
    double[] x = edge.numbers("edgewise_over_vh");
    double[] z = edge.numbers("axial_over_vh");
    return IntStream.range(0, x.length)
        .mapToDouble(i -> around(models, x[i], z[i], scale))
        .toArray();
  }

  /** The cubic model where the ray from the ellipse's centre through a point meets the ellipse. */
  private static double around(Models models, double x, double z, double scale) {
    double depth = 2 * z + 3;
    double size = Math.sqrt(1.5 * x * x + depth * depth) / scale;
    return models.cubic().induced(x / size, -1.5 + (z + 1.5) / size);
  }

  private static double[] along(InflowModel model, double[] z) {
    return Arrays.stream(z).map(s -> model.induced(0, s)).toArray();
  }

  private static double autorotation(InflowModel model) {
    return Autorotation.axialSpeed(model, 0).orElse(Double.NaN);
  }

  private static double leastSlope(InflowModel model) {
    return Arrays.stream(Grid.spaced(-1.9, -0.3, 1601))
        .map(z -> model.slope(0, z))
        .min()
        .orElse(Double.NaN);
  }

  private static TableCheck fit(String name, Source source) {
    return new TableCheck(name, "1", Obtained.FROM_MEMORY, source);
  }

  private static Question autorotation(String name, Source source) {
    return source
        .closedForm("ideal autorotation of the " + name, "z where z + v = 0", "1")
        .as(Obtained.FROM_MEMORY);
  }

  private static Question slope(String name, Source source) {
    return source.closedForm(name, "d(z + v)/dz", "1").as(Obtained.FROM_MEMORY);
  }

  private static Question jump(String half) {
    return Sources.JOHNSON_RING
        .closedForm(
            "cubic bridge is continuous on the edge of its ellipse " + half,
            "largest jump of v",
            "1")
        .as(Obtained.FROM_MEMORY);
  }

  private static Graph plot(Models models, ReferenceTable table) {
    double[] z = table.numbers("axial_over_vh");
    Graph plot =
        Graph.of("axial speed z / vh", "induced velocity v / vh").x(-2.05, 0.05).y(0.8, 2.7);
    return PublishedFits.draw(plot, models, 0, (model, at) -> model.induced(0, at))
        .points("computed, quartic, k = 1", Pens.DIAMOND, z, table.numbers("quartic_k1"))
        .points("computed, k = 1.15", Pens.SQUARE, z, table.numbers("quartic_k1.15"))
        .points("computed, two segments", Pens.TRIANGLE, z, table.numbers("two_segment_k1"))
        .points("computed, cubic", Pens.TRIANGLE_DOWN, z, table.numbers("cubic_bridge"));
  }

  private static Graph slopes(Models models) {
    InflowModel ideal = models.quartic(1);
    InflowModel lines = models.twoSegment(1);
    return Graph.of("axial speed z / vh", "heave slope d(z + v)/dz")
        .x(-2, 0)
        .y(-1, 2)
        .shade(-2, 0, -1, 0, 236)
        .curve("quartic", Pens.DASHED, s -> ideal.slope(0, s))
        .curve("two segments, k = 1", Pens.DOTTED, -1.499, 0, s -> lines.slope(0, s))
        .curve("cubic bridge", Pens.DASH_DOT, -1.999, 0, s -> models.cubic().slope(0, s))
        .curve("ring-state model", Pens.THICK, s -> models.ring().slope(0, s))
        .label("drives vertical motion", -0.3, -0.75)
        .label("damps vertical motion", -0.3, 1.75);
  }
}
