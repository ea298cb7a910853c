package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.rotor.InflowLag;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The lag of the induced velocity, and the thrust overshoot that it causes. */
final class InflowLagChecks {

  private static final Prose TEXT = Prose.of(InflowLagChecks.class);

  private static final double RISE = 0.1;

  private InflowLagChecks() {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    for (Helicopter craft : DemoCraft.ALL) {
      Rotor rotor = models.rotor(craft.numbers());
      double vh = 8;
      checks.add(
          Sources.CARPENTER
              .published(
                  "hover time constant of the inflow, " + craft.name(),
                  "time constant over R / vh",
                  "1")
              .near(
                  0.637 / 3,
                  0.0001,
                  rotor.inflowLag().time(0, vh, vh, vh) * vh / craft.si(Rotor.RADIUS),
                  "A two-thousandth: what keeps the mean flow from dividing by nothing adds 0.00005"
                      + " of it in hover."));
    }
    Rotor held = models.rotor(DemoCraft.TRAINER.numbers());
    checks.add(
        Sources.OWN_FORMULATION
            .at("mass flow not below 1 hover unit; assumed")
            .closedForm(
                "time constant where no mean flow passes the disc",
                "time constant over R / vh",
                "1")
            .near(
                0.637 * 4 / 3 / 2,
                1e-9,
                held.inflowLag().time(0, 0, 12, 8) * 8 / DemoCraft.TRAINER.si(Rotor.RADIUS),
                "The model's own bound, which has no source; the check holds it where it is."));
    double solid = models.dynamicInflow().uniformMass();
    checks.add(
        Sources.PITT_PETERS
            .at("M11 = 8 / (3 pi)")
            .published(
                "apparent mass beside that of the three-state theory", "mass over rho pi R^3", "1")
            .near(
                8 / (3 * Math.PI),
                0.001,
                InflowLag.APPARENT_MASS.standard(),
                "0.637 times 4/3 and 8 / (3 pi) are the same number rounded differently."));
    Rotor rotor = models.rotor(DemoCraft.TRAINER.numbers());
    double radius = DemoCraft.TRAINER.si(Rotor.RADIUS);
    double worst =
        Grid.largest(
            Grid.spaced(0, 3, 13),
            Grid.spaced(0, 2, 9),
            (x, z) -> {
              double v = Polynomial.momentumByEigenvalues(x, z)[0];
              double other = models.dynamicInflow().uniformLag(radius, 8 * x, 8 * (z + v), 8 * v);
              return Math.abs(rotor.inflowLag().time(8 * x, 8 * (z + v), 8 * v, 8) / other - 1);
            });
    checks.add(
        Sources.PITT_PETERS
            .at("first row: M11 R / (2 Vm)")
            .secondMethod("time constant in level flight and climb", "largest relative error", "1")
            .as(Obtained.FROM_MEMORY)
            .atMost(
                0.02,
                worst,
                "2 per cent: the smooth lower bound on the mass flow, which in momentum theory"
                    + " falls to 1.5 hover units near x = 1."));
    overshoot(models, checks);
    return TEXT.with("pittPeters", String.format(Locale.ROOT, "%.4f", solid / 4))
        .section("inflow-lag", List.of(TEXT.figure("overshoot", () -> plot(models))), checks);
  }

  private static void overshoot(Models models, List<Check> checks) {
    for (double rise : new double[] {2, 4, 6}) {
      ThrustResponse response = response(models, rise);
      double reference = reference(rise);
      checks.add(
          Sources.CARPENTER
              .at("m dv/dt = T - 2 rho A v^2")
              .secondMethod(
                  "thrust overshoot after a rise of collective by " + Math.round(rise) + " degrees",
                  "greatest over final thrust, less 1",
                  "1")
              .as(Obtained.FROM_MEMORY)
              .near(
                  reference,
                  0.07 * reference,
                  response.overshoot(response::lagged),
                  "7 per cent of the overshoot: the library's lag is linear about the state of the"
                      + " moment, the report's equation is not, and the further the rise the"
                      + " more they part (2.5, 4.6 and 6.1 per cent at 2, 4 and 6 degrees). The"
                      + " collective takes 0.1 s (assumed)."));
    }
  }

  private static double reference(double degrees) {
    ThrustResponse declared = response(new Models(), degrees);
    return declared.overshoot(declared::apparentMass);
  }

  private static ThrustResponse response(Models models, double degrees) {
    Rotor rotor = models.rotor(DemoCraft.TRAINER.numbers());
    double start = Math.toRadians(6);
    return new ThrustResponse(
        rotor,
        Craft.density(),
        DemoCraft.TRAINER.si(Rotor.TIP_SPEED),
        start,
        start + Math.toRadians(degrees),
        RISE);
  }

  private static Graph plot(Models models) {
    ThrustResponse response = response(models, 4);
    Graph plot = Graph.of("time, s", "thrust over final thrust").x(0, 0.6).y(0.5, 1.15);
    draw(plot, "library: lag of the inflow", Pens.THICK, response.history(response::lagged));
    draw(
        plot, "NACA TN 3044: apparent mass", Pens.DASHED, response.history(response::apparentMass));
    draw(
        plot,
        "inflow without lag",
        Pens.DOTTED,
        response.history(
            (thrust, v) ->
                400 * (Math.sqrt(Math.max(0, thrust) / response.twiceDensityArea()) - v)));
    return plot;
  }

  private static void draw(Graph plot, String name, Pen line, List<double[]> points) {
    plot.line(
        name,
        line,
        points.stream().mapToDouble(p -> p[0]).toArray(),
        points.stream().mapToDouble(p -> p[1]).toArray());
  }
}
