package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.study.model.PublishedRange;
import io.github.ringstate.study.model.PublishedRanges;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;

/** The boundary of the ring state by three criteria, beside published ranges. */
final class Boundaries {

  static final Prose TEXT = Prose.of(Boundaries.class);

  private static final String PROPERTY =
      "Textbooks put the ring state at about -0.4 or -0.5 to -1.4 or -1.5 and up to an edgewise"
          + " speed of 0.6 to 1.0.";

  private Boundaries() {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    tipVortex(models, checks);
    checks.addAll(wakeTransport(models));
    heaveDamping(models, checks);
    published(models, checks);
    checks.addAll(ReportedOnsets.checks(models));
    return TEXT.section(
        "boundaries", List.of(TEXT.figure("criteria", () -> criteria(models))), checks);
  }

  private static void tipVortex(Models models, List<Check> checks) {
    ReferenceTable table = ReferenceTable.read("tip_vortex_onset.csv");
    double[] onset =
        Arrays.stream(table.numbers("edgewise_over_vh"))
            .map(x -> models.tipVortex().bands(x).get(0).onset())
            .toArray();
    checks.addAll(
        new TableCheck("tip-vortex onset", "1", Obtained.COMPUTED, Sources.WOLKOVITCH)
            .of(table, "onset_over_vh", onset));
    double x = 0.5;
    double root = new BrentSolver(1e-14).solve(200, z -> models.tipVortex().margin(x, z), -1, -0.1);
    checks.add(
        Sources.WOLKOVITCH
            .closedForm("tip-vortex onset from the margin at x = 0.5", "z", "1")
            .near(
                -Math.sqrt((-x * x + Math.sqrt(Math.pow(x, 4) + 1)) / 2),
                1e-12,
                root,
                "The biquadratic 4 z^4 + 4 x^2 z^2 - 1 = 0 against a root finder's 1e-14."));
  }

  private static List<Check> wakeTransport(Models models) {
    BoundaryCriterion onSmooth = models.wakeTransport(models.smooth());
    BoundaryCriterion onQuartic = models.wakeTransport(models.quartic(1));
    double w = 0.5 * (0.2 + Math.sqrt(0.04 + 2));
    return List.of(
        Sources.BASSET
            .closedForm("wake transport: axial onset on the climb branch", "z", "1")
            .as(Obtained.FROM_MEMORY)
            .near(
                w - 1 / w,
                1e-9,
                onset(onSmooth, 0),
                "With v = 1 / w the criterion is w - 1 / (2 w) = 0.2; the finder's 1e-13."),
        Sources.BASSET
            .closedForm("wake transport: greatest edgewise speed", "x", "1")
            .as(Obtained.FROM_MEMORY)
            .near(
                0.8,
                1e-6,
                onSmooth.reach().orElse(Double.NaN),
                "k eps = 4 times 0.2; the end of a boundary is found to the square root of 1e-13."),
        Sources.BASSET
            .published("wake transport on the quartic fit: onset", "z", "1")
            .near(-0.495, 0.001, onset(onQuartic, 0), "Three decimals computed from the formulas."),
        Sources.BASSET
            .published("wake transport on the quartic fit: exit", "z", "1")
            .near(-1.19, 0.005, exit(onQuartic, 0), "Two decimals computed from the formulas."));
  }

  private static void heaveDamping(Models models, List<Check> checks) {
    BoundaryCriterion criterion = new HeaveDamping(models.ring());
    checks.add(
        range("heave damping: axial onset", "z", PublishedRanges.ONSET, onset(criterion, 0)));
    checks.add(range("heave damping: axial exit", "z", PublishedRanges.EXIT, exit(criterion, 0)));
    checks.add(
        range(
            "heave damping: greatest edgewise speed",
            "x",
            PublishedRanges.REACH,
            criterion.reach().orElse(Double.NaN)));
    for (double x : new double[] {0, 0.5}) {
      double h = 1e-6;
      double upright =
          new BrentSolver(1e-12)
              .solve(
                  200,
                  z ->
                      (RingStateAgain.induced(x, z + h) - RingStateAgain.induced(x, z - h))
                              / (2 * h)
                          + 1,
                  -0.9,
                  -0.3);
      checks.add(
          Sources.OWN_FORMULATION
              .secondMethod("heave damping: onset at x = " + x + " from differences", "z", "1")
              .near(
                  upright,
                  1e-6,
                  onset(criterion, x),
                  "Slope by central differences of the second working-out, and Brent's root."));
    }
  }

  private static void published(Models models, List<Check> checks) {
    BoundaryCriterion criterion = new HeaveDamping(models.ring());
    RingBand band = criterion.band(0).orElseThrow();
    for (Craft craft : Craft.all(models)) {
      double vh = craft.motion().hoverInduced();
      checks.add(
          Sources.STEWART
              .published("rate of descent at onset, demo craft " + craft.name(), "onset", "ft/min")
              .as(Obtained.PRINTED)
              .validation()
              .validation()
              .within(
                  500,
                  1500,
                  Unit.FOOT_PER_MINUTE.fromSi(-band.onset() * vh),
                  "The report's range for five helicopters."));
    }
    Craft light = Craft.of(models, DemoCraft.TRAINER);
    double exit = -band.exit().orElse(Double.NaN) * light.motion().hoverInduced();
    checks.add(
        Sources.STEWART
            .published("rate of descent at exit, demo craft trainer", "exit", "ft/min")
            .as(Obtained.PRINTED)
            .validation()
            .within(
                500,
                1500,
                Unit.FOOT_PER_MINUTE.fromSi(exit),
                "The report's range, taken as a band.")
            .butDiffers(1700, 2300, TEXT.say("exit-differs")));
    double first =
        Craft.all(models).stream()
            .mapToDouble(craft -> craft.motion().hoverInduced())
            .map(vh -> Unit.FOOT_PER_MINUTE.fromSi(-band.onset() * vh))
            .min()
            .orElse(Double.NaN);
    checks.add(
        Sources.HANDBOOK
            .at("chapter 11: at least 300 ft/min, below 16 to 24 kt, 20 to 100 per cent power")
            .published(
                "the handbook's 300 ft/min comes before every demo craft's onset",
                "least onset rate over 300 ft/min",
                "1")
            .as(Obtained.PRINTED)
            .validation()
            .within(
                1,
                5,
                first / 300,
                "The handbook warns, it does not give a boundary: 300 ft/min should lie outside,"
                    + " and not above the 1,500 ft/min of ARC R&M 3117."));
    double reach = criterion.reach().orElse(Double.NaN);
    airspeed(models, checks, DemoCraft.TRAINER, reach, 10);
    airspeed(models, checks, DemoCraft.UTILITY, reach, 20);
    airspeed(models, checks, DemoCraft.TWIN, reach, 30);
    airspeed(models, checks, DemoCraft.HEAVY, reach, 30);
  }

  private static void airspeed(
      Models models, List<Check> checks, Helicopter declared, double reach, double most) {
    Craft craft = Craft.of(models, declared);
    double knots = Unit.KNOT.fromSi(reach * craft.motion().hoverInduced());
    Check check =
        Sources.TRADE_PRESS
            .published(
                "greatest airspeed of the boundary, demo craft " + craft.name(), "airspeed", "kt")
            .as(Obtained.PRINTED)
            .validation()
            .within(
                0, most, knots, "Low, medium or high disc loading, by our choice of class for it.");
    checks.add(most > 10 ? check : check.butDiffers(10.2, 12.5, TEXT.say("airspeed-differs")));
  }

  private static double onset(BoundaryCriterion criterion, double x) {
    return criterion.band(x).map(RingBand::onset).orElse(Double.NaN);
  }

  private static double exit(BoundaryCriterion criterion, double x) {
    return criterion.band(x).map(band -> band.exit().orElse(Double.NaN)).orElse(Double.NaN);
  }

  private static Check range(String name, String quantity, PublishedRange range, double actual) {
    Source source = Sources.LEISHMAN.at("and other textbooks: typical limits of the ring state");
    return source
        .published(name, quantity, "1")
        .calibration()
        .within(range.low(), range.high(), actual, PROPERTY);
  }

  private static Graph criteria(Models models) {
    Graph plot = Graph.of("edgewise speed x / vh", "axial speed z / vh").x(0, 1.2).y(-2, 0);
    outline(plot, "heave damping, ring-state model", Pens.THICK, new HeaveDamping(models.ring()));
    outline(
        plot,
        "wake transport, smooth momentum",
        Pens.DASHED,
        models.wakeTransport(models.smooth()));
    outline(
        plot,
        "wake transport, ring-state model",
        Pens.DASH_DOT,
        models.wakeTransport(models.ring()));
    return plot.curve(
        "tip vortex, onset only", Pens.DOTTED, x -> models.tipVortex().bands(x).get(0).onset());
  }

  private static void outline(Graph plot, String name, Pen line, BoundaryCriterion criterion) {
    Outline outline = Outline.of(criterion);
    plot.line(name, line, outline.edgewise(), outline.axial());
  }
}
