package io.github.ringstate.validation.catalogue;

import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.reference.ErrorBudget;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;

/** The matrices of the three-state inflow theory against the flow they stand for. */
final class DynamicInflow {

  private static final Prose TEXT = Prose.of(DynamicInflow.class);

  private static final String[] STATES = {"mean", "sine", "cosine"};

  /**
   * Thrust coefficient of the pressure sqrt(1 - r^2), and moment coefficient of r sqrt(1 - r^2).
   */
  private static final double THRUST = 4.0 / 3;

  private static final double MOMENT = 4.0 / 15;

  /** By quadrature; the same whatever is under test, so they are worked out once. */
  private static final double[][] HOVER = gains(0);

  private static final double[][] HALF = gains(Math.PI / 6);
  private static final double[][] STEEP = gains(Math.PI / 3);

  private DynamicInflow() {}

  static Section section(Models models) {
    PittPetersInflow theory = models.dynamicInflow();
    return TEXT.section(
        "dynamic-inflow",
        List.of(TEXT.figure("gains", () -> plot(theory))),
        List.of(
            mass("apparent mass of the uniform state")
                .near(
                    integral(r -> 8 * r * Math.sqrt(1 - r * r)) / Math.PI,
                    1e-9,
                    theory.uniformMass(),
                    "Kinetic energy of the disc moving along its axis, potential (2 / pi) sqrt(1 -"
                        + " r^2) on its face, by quadrature."),
            mass("apparent mass of the gradient states")
                .near(
                    integral(r -> 8.0 / 3 * r * r * r * Math.sqrt(1 - r * r)) / Math.PI,
                    1e-9,
                    theory.gradientMass(),
                    "Kinetic energy of the disc turning about a diameter, potential (4 / (3 pi)) r"
                        + " cos psi sqrt(1 - r^2), by quadrature."),
            mass("apparent mass with a pressure that vanishes at the hub")
                .near(
                    128 / (75 * Math.PI),
                    1e-9,
                    theory.uniformMass() * hubRatio(),
                    "The ratio 16/25 of the accelerations that both pressures give, from the slopes"
                        + " of their potentials at the disc, averaged by quadrature."),
            hover(theory, 0, 0.5),
            hover(theory, 1, 2),
            hover(theory, 2, 2),
            gain("L with the wake at 90 degrees, coupling")
                .near(15 * Math.PI / 64, 1e-12, theory.gains(Math.PI / 2)[0][2], "Rounding."),
            quadrature("L in hover")
                .atMost(
                    2e-5,
                    worst(theory.gains(0), HOVER),
                    "Gauss points on the disc and along each streamline; the pressure is steep at"
                        + " the rim."),
            quadrature("L with the wake at 30 degrees")
                .atMost(2e-5, worst(theory.gains(Math.PI / 6), HALF), "As in hover."),
            quadrature("L with the wake at 60 degrees")
                .atMost(2e-5, worst(theory.gains(Math.PI / 3), STEEP), "As in hover.")));
  }

  private static Check hover(PittPetersInflow theory, int row, double expected) {
    return gain("L in hover, " + STATES[row] + " state")
        .near(expected, 1e-15, theory.gains(0)[row][row], "diag(1/2, 2, 2) / V; rounding.");
  }

  private static double integral(UnivariateFunction f) {
    // r = sin t takes the root at the rim away.
    return new IterativeLegendreGaussIntegrator(10, 1e-12, 1e-12)
        .integrate(100_000, t -> f.value(Math.sin(t)) * Math.cos(t), 0, Math.PI / 2);
  }

  /**
   * Mean acceleration of the air at the disc under sqrt(1 - r^2), over that under the same thrust
   * with the hub's part taken off. At the disc the potential's slope is (1 / nu) d/d(eta).
   */
  private static double hubRatio() {
    double plain = meanAcceleration(PressurePotential.THRUST);
    return plain / (plain - meanAcceleration(PressurePotential.HUB));
  }

  private static double meanAcceleration(PressurePotential pressure) {
    double h = 1e-5;
    return new IterativeLegendreGaussIntegrator(10, 1e-10, 1e-10)
        .integrate(
            100_000, nu -> -2 * (pressure.at(nu, h, 0) - pressure.at(nu, -h, 0)) / (2 * h), 0, 1);
  }

  /** L by quadrature, as positive numbers, in the order of {@link PittPetersInflow#gains}. */
  private static double[][] gains(double skew) {
    SkewedFlow.Response thrust =
        SkewedFlow.of(PressurePotential.THRUST, skew, false)
            .minus(SkewedFlow.of(PressurePotential.HUB, skew, false));
    SkewedFlow.Response sine = SkewedFlow.of(PressurePotential.MOMENT, skew, true);
    SkewedFlow.Response cosine = SkewedFlow.of(PressurePotential.MOMENT, skew, false);
    return new double[][] {
      {thrust.mean() / THRUST, sine.mean() / MOMENT, cosine.mean() / MOMENT},
      {thrust.sine() / THRUST, sine.sine() / MOMENT, cosine.sine() / MOMENT},
      {-thrust.cosine() / THRUST, sine.cosine() / MOMENT, cosine.cosine() / MOMENT}
    };
  }

  private static double worst(double[][] expected, double[][] actual) {
    return IntStream.range(0, 3)
        .mapToDouble(row -> ErrorBudget.of(expected[row], actual[row]).largest())
        .max()
        .orElseThrow();
  }

  private static Question mass(String name) {
    return Sources.LAMB
        .secondMethod(name, "mass over rho pi R^3 (R^5)", "1")
        .as(Obtained.FROM_MEMORY);
  }

  private static Question gain(String name) {
    return Sources.PITT_PETERS.closedForm(name, "V L", "1").as(Obtained.FROM_MEMORY);
  }

  private static Question quadrature(String name) {
    return Sources.QUADRATURE
        .at("pressure gradient along streamlines; Pitt and Peters, Vertica 5")
        .secondMethod(name + " by quadrature", "largest error of nine gains", "1");
  }

  private static Graph plot(PittPetersInflow theory) {
    double[] degrees = {0, 15, 30, 45, 60, 75};
    List<double[][]> found =
        Arrays.stream(degrees).mapToObj(d -> gains(Math.toRadians(d))).toList();
    return Graph.of("wake skew, degrees (0 in hover)", "gain V L")
        .x(-2, 92)
        .y(-0.1, 4.1)
        .curve("mean from thrust", Pens.SOLID, 0, 90, d -> gain(theory, d, 0, 0))
        .curve("cosine from thrust", Pens.DASHED, 0, 90, d -> gain(theory, d, 2, 0))
        .curve("sine from roll moment", Pens.DOTTED, 0, 90, d -> gain(theory, d, 1, 1))
        .curve("cosine from pitch moment", Pens.DASH_DOT, 0, 90, d -> gain(theory, d, 2, 2))
        .points("quadrature, mean", Pens.DIAMOND, degrees, each(found, 0, 0))
        .points("cosine from thrust, quadrature", Pens.SQUARE, degrees, each(found, 2, 0))
        .points("sine, quadrature", Pens.TRIANGLE, degrees, each(found, 1, 1))
        .points("cosine, quadrature", Pens.TRIANGLE_DOWN, degrees, each(found, 2, 2));
  }

  private static double gain(PittPetersInflow theory, double degrees, int row, int column) {
    return theory.gains(Math.toRadians(degrees))[row][column];
  }

  private static double[] each(List<double[][]> gains, int row, int column) {
    return gains.stream().mapToDouble(all -> all[row][column]).toArray();
  }
}
