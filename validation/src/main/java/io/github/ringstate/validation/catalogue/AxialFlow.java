package io.github.ringstate.validation.catalogue;

import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.ComparedWith;
import io.github.ringstate.validation.check.Figure;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Momentum theory in axial flow: the climb and windmill branches. */
public final class AxialFlow implements Topic {

  private static final String ROUNDING =
      "Rounding only: a few units of the last digit in double precision.";

  /** Creates the topic. */
  public AxialFlow() {}

  @Override
  public Section section(Models models) {
    ReferenceTable table =
        ReferenceTable.read("momentum_theory.csv").where("branch", "axial"::equals);
    double[] z = table.numbers("axial_over_vh");
    double[] v = along(models, z);
    List<Check> checks =
        new ArrayList<>(
            new TableCheck(
                    "axial climb and windmill branches",
                    "1",
                    ComparedWith.PUBLISHED_VALUE,
                    Obtained.COMPUTED,
                    Sources.MOMENTUM_THEORY)
                .of(table, "induced_over_vh", v));
    double golden = (Math.sqrt(5) - 1) / 2;
    checks.add(
        closedForm("climb at z = 1", "v")
            .near(golden, 4e-16, models.momentum().induced(0, 1), ROUNDING));
    checks.add(
        closedForm("windmill state begins at z = -2", "v")
            .near(1, 1e-15, models.momentum().induced(0, -2), ROUNDING));
    double[] below = models.momentumRoots(0, -1);
    checks.add(
        closedForm("climb branch continued to z = -1", "v")
            .near(1 + golden, 1e-15, below[below.length - 1], ROUNDING));
    double[] end = models.momentumRoots(0, -2);
    checks.add(
        closedForm("climb branch continued to z = -2", "v")
            .near(1 + Math.sqrt(2), 1e-15, end[end.length - 1], ROUNDING));
    checks.add(
        closedForm("heave slope d(z + v)/dz in hover", "slope")
            .near(0.5, 1e-15, models.momentum().slope(0, 0), ROUNDING));
    return new Section(
        "axial-flow",
        "Axial flow by momentum theory",
        List.of(
            "A slipstream that passes through the disc in one direction gives v = -z/2 +"
                + " sqrt(z^2/4 + 1) in climb and v = -z/2 - sqrt(z^2/4 - 1) below z = -2. Between"
                + " the two there is none, and the library's momentum theory refuses to answer.",
            "All speeds are in units of the hover induced velocity vh = sqrt(T / (2 rho A)): z is"
                + " the axial speed, positive in climb; x the edgewise speed; v the induced"
                + " velocity; w = z + v the total inflow.",
            "Reference data: " + String.join(" ", table.origin())),
        List.of(
            new Figure(
                "axial-branches",
                "Induced velocity in climb and in the windmill brake state",
                "Lines: the library's momentum theory. Circles: values computed from the formula"
                    + " with 50 digits. In the gap between the branches the library gives no value.",
                () -> plot(models, z, table.numbers("induced_over_vh")))),
        checks);
  }

  private static double[] along(Models models, double[] z) {
    return IntStream.range(0, z.length)
        .mapToDouble(i -> models.momentum().induced(0, z[i]))
        .toArray();
  }

  private static Question closedForm(String name, String quantity) {
    return new Question(
        name, quantity, "1", ComparedWith.CLOSED_FORM, Obtained.COMPUTED, Sources.MOMENTUM_THEORY);
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
