package io.github.ringstate.validation.catalogue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;

/** Thrust and power of the rotor, and the hover of the demo craft. */
final class Hover {

  static final Prose TEXT = Prose.of(Hover.class);

  private static final List<Pen> LINES =
      List.of(Pens.THICK, Pens.DASHED, Pens.DOTTED, Pens.DASH_DOT);

  private Hover() {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    for (Craft craft : Craft.all(models)) {
      Motion hover = craft.vertical(0);
      double thrust = hover.loads().thrust();
      double ideal = thrust * craft.hoverInduced(thrust);
      checks.add(
          Sources.LEISHMAN
              .at("and other textbooks: 0.6 to 0.75")
              .published(
                  "figure of merit, demo craft " + craft.name(), "T vh / P of the main rotor", "1")
              .calibration()
              .within(
                  0.6,
                  0.75,
                  ideal / hover.loads().rotorPower(),
                  "The range usual for real rotors."));
      double power = craft.si(Rotor.INDUCED_POWER_FACTOR) * ideal + craft.profilePower(thrust);
      checks.add(
          Sources.LEISHMAN
              .at("chapter 2: P = k T vh + (s cd / 8) rho A Vtip^3")
              .closedForm("main rotor power in hover, demo craft " + craft.name(), "power", "kW")
              .near(
                  power / 1000,
                  4e-4 * power / 1000,
                  hover.loads().rotorPower() / 1000,
                  "The trimmed hover's thrust is taken over. The library's scale of thrust never"
                      + " vanishes, which adds 2 parts in 10,000 to the hover induced velocity."));
      double weight = craft.declared().mass() * StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901;
      checks.add(
          Sources.MECHANICS
              .at("equilibrium of forces")
              .closedForm(
                  "thrust in hover, demo craft " + craft.name(),
                  "thrust less download over weight",
                  "1")
              .near(
                  1,
                  0.005,
                  thrust * (1 - craft.si(CraftBody.DOWNLOAD)) / weight,
                  "The shaft leans by 2.7 to 4.3 degrees against the tail rotor's side force; the"
                      + " cosine of that is 0.997 or more."));
    }
    bladeElements(models, checks);
    power(models, checks);
    checks.addAll(ModelHover.checks(models));
    checks.addAll(RealCraft.checks(models));
    return TEXT.section(
        "hover", List.of(TEXT.figure("figure-of-merit", () -> plot(models))), checks);
  }

  private static void bladeElements(Models models, List<Check> checks) {
    ParameterSet numbers = DemoCraft.TRAINER.numbers();
    ParameterSet plain =
        numbers
            .with(Rotor.TWIST, 0)
            .with(Rotor.TIP_LOSS, 1)
            .with(Rotor.ROOT_CUTOUT, 0)
            .with(Rotor.BLADE_LOADING_LIMIT, 0.24);
    Source simple = Sources.GESSOW_MYERS.at("CT/s = (a/2) [theta (1/3 + mu^2/2) - lambda/2]");
    for (double mu : new double[] {0, 0.1}) {
      checks.add(
          simple
              .closedForm(
                  "blade loading of a plain blade " + (mu == 0 ? "in hover" : "at mu = " + mu),
                  "CT/s",
                  "1")
              .near(
                  textbook(plain, 0.09, mu, 0.02),
                  1e-12,
                  loading(models, plain, 0.09, mu, 0.02),
                  "Rounding: the loading is linear up to half of its limit."));
    }
    for (double mu : new double[] {0, 0.1}) {
      checks.add(
          Sources.QUADRATURE
              .at("integral along the blade, 0.1 R to 0.97 R")
              .secondMethod("blade loading of the trainer's blade at mu = " + mu, "CT/s", "1")
              .near(
                  limited(integral(numbers, 0.17, mu, 0.034), 0.16),
                  1e-12,
                  loading(models, numbers, 0.17, mu, 0.034),
                  "Twist, tip loss and cut-out by quadrature, then the documented limit; rounding."));
    }
    checks.add(
        Sources.OWN_FORMULATION
            .at("1 - 35/512 of the limit: the bend at its middle")
            .closedForm("blade loading where the linear one is at its limit", "CT/s", "1")
            .near(
                0.16 * (1 - 35.0 / 512),
                1e-12,
                loading(models, plain.with(Rotor.BLADE_LOADING_LIMIT, 0.16), atLimit(plain), 0, 0),
                "The model's own formula, which stands for stall; assumed, no source."));
  }

  private static void power(Models models, List<Check> checks) {
    ParameterSet numbers = DemoCraft.TRAINER.numbers();
    Rotor rotor = models.rotor(numbers);
    double tip = numbers.si(Rotor.TIP_SPEED);
    double area = Math.PI * Math.pow(numbers.si(Rotor.RADIUS), 2);
    double hover =
        numbers.si(Rotor.SOLIDITY) * 0.01 / 8 * Craft.density() * area * Math.pow(tip, 3);
    checks.add(
        Sources.LEISHMAN
            .at("chapter 2: (s cd0 / 8) rho A Vtip^3")
            .closedForm("profile power in hover", "power", "kW")
            .near(
                hover / 1000,
                1e-9,
                rotor.bladeDrag().profilePower(Craft.density(), tip, 0, 0.07) / 1000,
                "Rounding."));
    checks.add(
        Sources.LEISHMAN
            .at("chapter 5: 1 + 4.65 mu^2")
            .published("profile power at mu = 0.2", "power", "kW")
            .near(
                hover * (1 + 4.65 * 0.04) / 1000,
                1e-9,
                rotor.bladeDrag().profilePower(Craft.density(), tip, 0.04 * tip * tip, 0.07) / 1000,
                "Rounding."));
    for (double loading : new double[] {0.02, 0.14}) {
      checks.add(
          Sources.BAILEY
              .secondMethod(
                  "profile power in hover at a blade loading of " + loading, "power", "kW")
              .as(Obtained.FROM_MEMORY)
              .near(
                  (hover + 0.03 * Craft.density() * area * Math.pow(tip, 3) * polarTorque(loading))
                      / 1000,
                  1e-9,
                  rotor.bladeDrag().profilePower(Craft.density(), tip, 0, loading) / 1000,
                  "The published polar along a blade of ideal twist, by quadrature; rounding."));
    }
    checks.add(
        Sources.LEISHMAN
            .at("chapter 2: k T v, k = 1.15")
            .closedForm("induced power with no losses in the inflow", "power", "kW")
            .as(Obtained.FROM_MEMORY)
            .near(
                1.15 * 6000 * 7 / 1000,
                1e-9,
                rotor.thrustPower(6000, 0, 7, 0, 0) / 1000,
                "Rounding."));
    checks.add(
        Sources.MECHANICS
            .at("T (V + v): the losses are counted once")
            .closedForm("induced power with all losses in a measured inflow", "power", "kW")
            .near(
                6000 * (-4.0 + 10) / 1000,
                1e-9,
                rotor.thrustPower(6000, -4, 10, 1, 0) / 1000,
                "Rounding."));
  }

  /** Torque over s of the polar beyond that at a blade loading of 0.07: integral of cd r^3 / 2. */
  private static double polarTorque(double loading) {
    return integral(
        r -> {
          double attack = 4 * loading / (5.73 * r);
          double usual = 4 * 0.07 / (5.73 * r);
          double drag = -0.0216 * (attack - usual) + 0.4 * (attack * attack - usual * usual);
          return 0.5 * drag * r * r * r;
        },
        1e-9,
        1);
  }

  private static double loading(
      Models models, ParameterSet numbers, double collective, double mu, double lambda) {
    Rotor rotor = models.rotor(numbers);
    double tip = numbers.si(Rotor.TIP_SPEED);
    double thrust =
        rotor.thrust(Craft.density(), tip, collective, mu * mu * tip * tip, lambda * tip);
    double area = Math.PI * Math.pow(numbers.si(Rotor.RADIUS), 2);
    return thrust / (Craft.density() * area * tip * tip * numbers.si(Rotor.SOLIDITY));
  }

  private static double textbook(
      ParameterSet numbers, double collective, double mu, double lambda) {
    double slope = numbers.si(Rotor.LIFT_SLOPE);
    return slope / 2 * (collective * (1.0 / 3 + mu * mu / 2) - lambda / 2);
  }

  private static double atLimit(ParameterSet numbers) {
    return 0.16 * 6 / numbers.si(Rotor.LIFT_SLOPE);
  }

  private static double integral(
      ParameterSet numbers, double collective, double mu, double lambda) {
    double twist = numbers.si(Rotor.TWIST);
    double along =
        new IterativeLegendreGaussIntegrator(8, 1e-14, 1e-15)
            .integrate(
                100_000,
                r -> (collective + twist * (r - 0.75)) * (r * r + mu * mu / 2) - lambda * r,
                numbers.si(Rotor.ROOT_CUTOUT),
                numbers.si(Rotor.TIP_LOSS));
    return numbers.si(Rotor.LIFT_SLOPE) / 2 * along;
  }

  /**
   * The hard limit convolved with the documented bell, by quadrature on both sides of its corner.
   */
  private static double limited(double linear, double limit) {
    double width = limit / 2;
    double corner = Math.min(Math.max((linear - limit) / width, -1), 1);
    UnivariateFunction bell = s -> 35.0 / 32 * (1 - s * s) * (1 - s * s) * (1 - s * s);
    double held = corner > -1 ? integral(s -> limit * bell.value(s), -1, corner) : 0;
    double free = corner < 1 ? integral(s -> (linear - width * s) * bell.value(s), corner, 1) : 0;
    return held + free;
  }

  private static double integral(UnivariateFunction function, double from, double to) {
    return new IterativeLegendreGaussIntegrator(8, 1e-14, 1e-15)
        .integrate(100_000, function, from, to);
  }

  private static Graph plot(Models models) {
    Graph plot =
        Graph.of("blade loading CT/s", "figure of merit")
            .x(0, 0.14)
            .y(0.2, 0.9)
            .shade(0, 0.14, 0.6, 0.75, 236);
    double[] at = new double[DemoCraft.ALL.size()];
    double[] merit = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      Craft craft = Craft.of(models, DemoCraft.ALL.get(i));
      Motion hover = craft.vertical(0);
      double scale =
          Craft.density()
              * craft.area()
              * Math.pow(craft.si(Rotor.TIP_SPEED), 2)
              * craft.si(Rotor.SOLIDITY);
      at[i] = hover.loads().thrust() / scale;
      merit[i] = RealCraft.figureOfMerit(craft);
      plot.curve(
          craft.name(),
          LINES.get(i),
          0.01,
          0.14,
          loading -> {
            double ideal = loading * scale * craft.hoverInduced(loading * scale);
            double profile = craft.profilePower(loading * scale);
            return ideal / (craft.si(Rotor.INDUCED_POWER_FACTOR) * ideal + profile);
          });
    }
    return plot.points("hover of the demo craft", Pens.CIRCLE, at, merit)
        .label("usual range", 0.016, 0.735);
  }
}
