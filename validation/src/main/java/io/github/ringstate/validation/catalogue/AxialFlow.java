package io.github.ringstate.validation.catalogue;

import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Momentum theory in axial flow: the climb and windmill branches. */
final class AxialFlow {

  private static final Prose TEXT = Prose.of(AxialFlow.class);

  private static final String ROUNDING =
      "Rounding only: a few units of the last digit in double precision.";

  private AxialFlow() {}

  static Section section(Models models) {
    ReferenceTable table =
        ReferenceTable.read("momentum_theory.csv").where("branch", "axial"::equals);
    double[] z = table.numbers("axial_over_vh");
    double[] v = along(models, z);
    List<Check> branches =
        new TableCheck(
                "axial climb and windmill branches",
                "1",
                Obtained.COMPUTED,
                Sources.MOMENTUM_THEORY)
            .of(table, "induced_over_vh", v);
    double golden = (Math.sqrt(5) - 1) / 2;
    double[] below = models.momentumRoots(0, -1);
    double[] end = models.momentumRoots(0, -2);
    return TEXT.section(
        "axial-flow",
        List.of(
            TEXT.figure("axial-branches", () -> plot(models, z, table.numbers("induced_over_vh")))),
        Stream.concat(
                branches.stream(),
                Stream.of(
                    closedForm("climb at z = 1", "v")
                        .near(golden, 4e-16, models.momentum().induced(0, 1), ROUNDING),
                    closedForm("windmill state begins at z = -2", "v")
                        .near(1, 1e-15, models.momentum().induced(0, -2), ROUNDING),
                    closedForm("climb branch continued to z = -1", "v")
                        .near(1 + golden, 1e-15, below[below.length - 1], ROUNDING),
                    closedForm("climb branch continued to z = -2", "v")
                        .near(1 + Math.sqrt(2), 1e-15, end[end.length - 1], ROUNDING),
                    closedForm("heave slope d(z + v)/dz in hover", "slope")
                        .near(0.5, 1e-15, models.momentum().slope(0, 0), ROUNDING)))
            .toList(),
        table);
  }

  private static double[] along(Models models, double[] z) {
    return IntStream.range(0, z.length)
        .mapToDouble(i -> models.momentum().induced(0, z[i]))
        .toArray();
  }

  private static Question closedForm(String name, String quantity) {
    return Sources.MOMENTUM_THEORY.closedForm(name, quantity, "1");
  }

  private static Graph plot(Models models, double[] z, double[] v) {
    return Graph.of("axial speed z / vh (climb positive)", "induced velocity v / vh")
        .x(-4.2, 4.2)
        .y(0, 1.2)
        .curve("library, climb branch", Pens.SOLID, 0, 4.2, s -> models.momentum().induced(0, s))
        .curve(
            "library, windmill branch", Pens.DASHED, -4.2, -2, s -> models.momentum().induced(0, s))
        .points("computed values", Pens.CIRCLE, z, v)
        .label("no slipstream", -1, 0.55);
  }
}
