package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.numerics.Method;
import io.github.ringstate.validation.numerics.Problem;
import io.github.ringstate.validation.numerics.Problems;
import io.github.ringstate.validation.numerics.Run;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Error against step and tolerance, event times, and the cost of a given accuracy. */
final class Integrators {

  private static final Prose TEXT = Prose.of(Integrators.class);

  private static final Map<Method, Pen> LINES =
      Map.of(
          Method.DORMAND_PRINCE_853, Pens.THICK,
          Method.DORMAND_PRINCE_54, Pens.DASHED,
          Method.EXTRAPOLATION, Pens.DASH_DOT,
          Method.RUNGE_KUTTA_4, Pens.DOTTED);
  private static final double[] TOLERANCES = {
    1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10, 1e-11, 1e-12
  };
  private static final int[] STEPS = {10, 14, 20, 28, 40, 56, 80, 112, 160, 224, 320, 640, 1280};

  /** Below this an error is rounding and says nothing of the order. */
  private static final double ROUNDING = 3e-13;

  private Integrators() {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    for (Method method : Method.values()) {
      if (method.order() > 0) {
        checks.add(
            Sources.HAIRER
                .published("order of " + method.label(), "slope of log error against log step", "1")
                .near(
                    method.order(),
                    0.35,
                    order(method),
                    "A fit over finite steps: the next order still shows at the large ones, and"
                        + " rounding at the small ones."));
      }
    }
    for (Problem problem : problems()) {
      for (Method method : List.of(Method.DORMAND_PRINCE_853, Method.EXTRAPOLATION)) {
        Run run = method.withTolerance(problem, 1e-10);
        checks.add(
            exact("state at the end, " + problem.name() + ", " + method.label(), "largest error")
                .atMost(
                    2e-8,
                    run.error(),
                    "Tolerance 1e-10 at every step; errors add up along the way, and the falls are"
                        + " a hundred metres long."));
        checks.add(
            exact("event times, " + problem.name() + ", " + method.label(), "largest error, s")
                .atMost(
                    1e-8,
                    run.eventError(),
                    "Events are found on the dense output, whose order is lower than the"
                        + " method's."));
      }
    }
    flights(models, checks);
    return TEXT.section(
        "integrators",
        List.of(
            TEXT.figure("order", Integrators::orders),
            TEXT.figure("tolerance", Integrators::tolerances),
            TEXT.figure("cost", Integrators::costs),
            TEXT.figure("flight-cost", () -> flightCosts(models))),
        checks);
  }

  private static List<Problem> problems() {
    return List.of(Problems.fallWithDrag(40), Problems.oscillator(), Problems.bouncingBall());
  }

  /** Least-squares slope of log error against log step, above rounding. */
  private static double order(Method method) {
    double n = 0;
    double sx = 0;
    double sy = 0;
    double sxx = 0;
    double sxy = 0;
    for (int steps : STEPS) {
      double h = 10.0 / steps;
      double error = method.withStep(Problems.oscillator(), h).error();
      if (h < 0.6 && error > ROUNDING) {
        double x = Math.log(h);
        double y = Math.log(error);
        n++;
        sx += x;
        sy += y;
        sxx += x * x;
        sxy += x * y;
      }
    }
    return (n * sxy - sx * sy) / (n * sxx - sx * sx);
  }

  private static void flights(Models models, List<Check> checks) {
    double yardstick = loss(models, Simulator.extrapolation(1e-12), new Forward());
    double standard = loss(models, Simulator.precise(), new Forward());
    Source source = Sources.EXTRAPOLATION.at("tolerance 1e-12");
    checks.add(
        source
            .secondMethod("altitude loss of a whole encounter", "difference to the yardstick", "ft")
            .atMost(
                1e-4,
                Math.abs(standard - yardstick),
                "A ten-thousandth of a foot, far below any meaning of the model."));
    checks.add(
        source
            .secondMethod(
                "altitude loss of a whole encounter by the fast propagator",
                "difference to the yardstick",
                "ft")
            .atMost(
                0.01,
                Math.abs(loss(models, Simulator.fast(), new Forward()) - yardstick),
                "A hundredth of a foot; bulk work as a whole is held within a tenth."));
    Counting counting = new Counting(new Forward());
    loss(models, Simulator.precise(), counting);
    checks.add(
        Sources.REQUIREMENT
            .at("a bound on cost, in evaluations")
            .commonPractice(
                "cost of a whole encounter at the library's tolerance",
                "evaluations in the recovery",
                "1")
            .as(Obtained.COMPUTED)
            .within(
                100,
                20_000,
                counting.count,
                "Held so that a change of equations or events does not multiply the cost unseen."));
  }

  private static double loss(Models models, Simulator simulator, Recovery recovery) {
    return Unit.FOOT.fromSi(
        Encounter.of(DemoCraft.TRAINER)
            .withInflow(models.ring(), new HeaveDamping(models.ring()))
            .withRecovery(recovery)
            .fly(simulator, null)
            .altitudeLoss()
            .orElse(Double.NaN));
  }

  /** Counts how often the equations of motion ask what the pilot does. */
  private static final class Counting implements Recovery {

    private final Recovery recovery;
    private int count;

    Counting(Recovery recovery) {
      this.recovery = recovery;
    }

    @Override
    public String name() {
      return recovery.name();
    }

    @Override
    public List<Phase> phases() {
      return recovery.phases().stream().map(this::counted).toList();
    }

    private Phase counted(Phase phase) {
      ControlLaw command =
          (seen, controls) -> {
            count++;
            phase.command(seen, controls);
          };
      return phase.ends()
          ? Phase.of(phase.name(), command, phase::end)
          : Phase.last(phase.name(), command);
    }
  }

  private static Question exact(String name, String quantity) {
    return Sources.MECHANICS.closedForm(name, quantity, "1");
  }

  private static Graph orders() {
    Graph plot = Graph.of("step, s", "error").logarithmicX(0.0049, 1.2).logarithmicY(0.9e-16, 1.2);
    for (Method method : Method.values()) {
      if (method.order() > 0) {
        double[] h = Arrays.stream(STEPS).mapToDouble(n -> 10.0 / n).toArray();
        double[] error =
            Arrays.stream(h)
                .map(s -> Math.max(1e-16, method.withStep(Problems.oscillator(), s).error()))
                .toArray();
        plot.marked(method.label(), LINES.getOrDefault(method, Pens.SOLID), h, error);
        double at = error[2];
        plot.line(
            Pens.RULE,
            new double[] {h[2], h[8]},
            new double[] {3 * at, 3 * at * Math.pow(h[8] / h[2], method.order())});
      }
    }
    return plot;
  }

  private static Graph tolerances() {
    Graph plot =
        Graph.of("tolerance", "error at the end, m or m/s")
            .logarithmicX(5e-13, 2e-4)
            .logarithmicY(0.9e-14, 1.1e-2);
    plot.line(Pens.RULE, new double[] {1e-12, 1e-4}, new double[] {1e-12, 1e-4});
    for (Method method : Method.values()) {
      if (method != Method.RUNGE_KUTTA_4) {
        double[] errors =
            Arrays.stream(TOLERANCES)
                .map(t -> method.withTolerance(Problems.fallWithDrag(40), t).error())
                .map(e -> Math.max(e, 1e-14))
                .toArray();
        plot.marked(method.label(), LINES.getOrDefault(method, Pens.SOLID), TOLERANCES, errors);
      }
    }
    return plot;
  }

  private static Graph costs() {
    Graph plot =
        Graph.of("error at the end, m or m/s", "evaluations of the right-hand side")
            .logarithmicX(0.9e-14, 1.1e-2)
            .logarithmicY(9, 20_000);
    for (Method method : Method.values()) {
      List<Run> runs =
          method == Method.RUNGE_KUTTA_4
              ? Arrays.stream(STEPS)
                  .mapToObj(n -> method.withStep(Problems.fallWithDrag(40), 10.0 / n))
                  .toList()
              : Arrays.stream(TOLERANCES)
                  .mapToObj(t -> method.withTolerance(Problems.fallWithDrag(40), t))
                  .toList();
      plot.marked(
          method.label(),
          LINES.getOrDefault(method, Pens.SOLID),
          runs.stream().mapToDouble(r -> Math.max(r.error(), 1e-14)).toArray(),
          runs.stream().mapToDouble(Run::evaluations).toArray());
    }
    return plot;
  }

  private static Graph flightCosts(Models models) {
    double yardstick = loss(models, Simulator.extrapolation(1e-12), new Forward());
    double[] tolerances = {1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10};
    double[] error = new double[tolerances.length];
    double[] count = new double[tolerances.length];
    for (int i = 0; i < tolerances.length; i++) {
      Counting counting = new Counting(new Forward());
      double loss = loss(models, Simulator.dormandPrince(tolerances[i]), counting);
      error[i] = Math.max(1e-12, Math.abs(loss - yardstick));
      count[i] = counting.count;
    }
    return Graph.of("error of the altitude loss, ft", "evaluations in the recovery")
        .logarithmicX(0.9e-12, 1.2)
        .logarithmicY(90, 11_000)
        .line("Dormand-Prince 8(5,3)", Pens.THICK, error, count)
        .points("tolerance 1e-4 to 1e-10", Pens.CIRCLE, error, count);
  }
}
