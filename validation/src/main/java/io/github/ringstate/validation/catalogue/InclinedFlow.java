package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.MomentumTheory;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ErrorBudget;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Momentum theory in level and inclined flow, its roots found by three libraries. */
final class InclinedFlow {

  private static final Prose TEXT = Prose.of(InclinedFlow.class);

  private static final double[] EDGEWISE = Grid.spaced(0.05, 6, 24);
  private static final double[] CLIMB = Grid.spaced(0, 5, 21);
  private static final double[] WINDMILL = Grid.spaced(-5, -2.05, 21);
  private static final double[] DESCENT = Grid.spaced(-2, 0, 21);
  private static final double[] SINGLE = Grid.spaced(0.66, 6, 24);
  private static final double[] THREE_EDGEWISE = Grid.spaced(0.1, 0.5, 9);
  private static final double[] THREE_AXIAL = Grid.spaced(-1.98, -1.8, 10);

  /** The same whatever is under test, so it is worked out once. */
  private static final double LEAST_SINGLE = leastSingle();

  /** Solves the momentum equation. */
  @FunctionalInterface
  private interface Solver {
    double[] roots(double x, double z);
  }

  private InclinedFlow() {}

  static Section section(Models models) {
    ReferenceTable table = ReferenceTable.read("momentum_theory.csv");
    return TEXT.section(
        "inclined-flow",
        List.of(
            TEXT.figure(
                "inclined", () -> plot(models, table.where("branch", b -> !b.equals("axial"))))),
        Stream.concat(
                Stream.of("level", "inclined").flatMap(branch -> table(models, table, branch)),
                Stream.of(
                    closedForm("wake straight back at x = 1, z = -1", "v")
                        .near(
                            1,
                            1e-15,
                            models.momentum().induced(1, -1),
                            "Rounding. There z + v = 0, so v = 1 / x."),
                    closedForm("wake straight back at x = 2, z = -1/2", "v")
                        .near(
                            0.5,
                            1e-15,
                            models.momentum().induced(2, -0.5),
                            "Rounding. There z + v = 0, so v = 1 / x."),
                    closedForm("fast level flight, x = 6: v = 1 / x", "v")
                        .near(
                            1.0 / 6,
                            0.5 / Math.pow(6, 5),
                            models.momentum().induced(6, 0),
                            "The next term of the series, 1 / (2 x^5)."),
                    secondMethod(
                            Sources.LAGUERRE,
                            "one root, found by Laguerre's method",
                            "largest error of v")
                        .atMost(
                            1e-13,
                            singleRoot(models, Polynomial::momentumByLaguerre),
                            "A simple root of a quartic in double precision; 1,500 points."),
                    secondMethod(
                            Sources.EJML, "one root, by companion matrix", "largest error of v")
                        .atMost(
                            1e-12,
                            singleRoot(models, Polynomial::momentumByEigenvalues),
                            "A simple root as an eigenvalue in double precision; 1,500 points."),
                    secondMethod(
                            Sources.LAGUERRE,
                            "three roots, found by Laguerre's method",
                            "largest error")
                        .atMost(
                            1e-11,
                            threeRoots(models, Polynomial::momentumByLaguerre),
                            "Rounding over the distance of two roots, which is 0.1 or more on this grid of 90"
                                + " points."),
                    secondMethod(Sources.EJML, "three roots, by companion matrix", "largest error")
                        .atMost(
                            1e-11,
                            threeRoots(models, Polynomial::momentumByEigenvalues),
                            "Rounding over the distance of two roots, which is 0.1 or more on this grid of 90"
                                + " points."),
                    secondMethod(Sources.EJML, "edgewise speed above which there is one root", "x")
                        .near(
                            LEAST_SINGLE,
                            5e-4,
                            MomentumTheory.singleRootEdgewise(),
                            "The number of roots is counted on a grid of axial speeds 2e-5 apart, beside the"
                                + " corner z = -1.7547; the range with three is as wide as the distance from the"
                                + " corner to the power 3/2.")))
            .toList(),
        table);
  }

  private static Stream<Check> table(Models models, ReferenceTable table, String branch) {
    ReferenceTable part = table.where("branch", branch::equals);
    double[] x = part.numbers("edgewise_over_vh");
    double[] z = part.numbers("axial_over_vh");
    return new TableCheck(branch + " flow", "1", Obtained.COMPUTED, Sources.MOMENTUM_THEORY)
            .of(
                part,
                "induced_over_vh",
                IntStream.range(0, x.length)
                    .mapToDouble(i -> models.momentum().induced(x[i], z[i]))
                    .toArray())
            .stream();
  }

  private static double singleRoot(Models models, Solver solver) {
    DoubleBinaryOperator error =
        (x, z) -> {
          double[] roots = solver.roots(x, z);
          return roots.length == 0
              ? Double.NaN
              : Math.abs(roots[0] - models.momentum().induced(x, z));
        };
    return Math.max(
        Grid.largest(EDGEWISE, CLIMB, error),
        Math.max(Grid.largest(EDGEWISE, WINDMILL, error), Grid.largest(SINGLE, DESCENT, error)));
  }

  private static double threeRoots(Models models, Solver solver) {
    return Grid.largest(
        THREE_EDGEWISE,
        THREE_AXIAL,
        (x, z) -> {
          double[] expected = solver.roots(x, z);
          double[] actual = models.momentumRoots(x, z);
          return expected.length == actual.length
              ? ErrorBudget.of(expected, actual).largest()
              : Double.NaN;
        });
  }

  /** Bisects on the number of roots that the eigenvalues show anywhere near the corner. */
  private static double leastSingle() {
    double low = 0.6;
    double high = 0.64;
    while (high - low > 2e-5) {
      double middle = 0.5 * (low + high);
      if (threeSomewhere(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private static boolean threeSomewhere(double x) {
    return DoubleStream.iterate(-1.745, z -> z > -1.790, z -> z - 2e-5)
        .anyMatch(z -> Polynomial.momentumByEigenvalues(x, z).length == 3);
  }

  private static Question closedForm(String name, String quantity) {
    return Sources.MOMENTUM_THEORY.closedForm(name, quantity, "1");
  }

  private static Question secondMethod(Source source, String name, String quantity) {
    return source.secondMethod(name, quantity, "1");
  }

  private static Graph plot(Models models, ReferenceTable table) {
    Graph plot = Graph.of("edgewise speed x / vh", "induced velocity v / vh").x(0, 6.2).y(0, 1.35);
    plot.curve("z = 0", Pens.THICK, x -> models.momentum().induced(x, 0));
    plot.curve("z = 0.5", Pens.DASHED, x -> models.momentum().induced(x, 0.5));
    plot.curve("z = 1", Pens.DOTTED, x -> models.momentum().induced(x, 1));
    plot.curve("z = -0.5", Pens.DASH_DOT, 0.63, 6.2, x -> models.momentum().induced(x, -0.5));
    plot.curve("z = -1", Pens.SOLID, 0.63, 6.2, x -> models.momentum().induced(x, -1));
    plot.points(
        "computed values",
        Pens.CIRCLE,
        table.numbers("edgewise_over_vh"),
        table.numbers("induced_over_vh"));
    return plot;
  }
}
