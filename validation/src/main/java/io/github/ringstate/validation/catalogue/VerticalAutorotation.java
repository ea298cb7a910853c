package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.Autorotation;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.study.model.PublishedRanges;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ErrorBudget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Ideal and real vertical autorotation. */
final class VerticalAutorotation {

  static final Prose TEXT = Prose.of(VerticalAutorotation.class);

  private static final double[] AXIAL = {-1.6, -1.7, -1.71, -1.75, -1.8, -1.85, -1.9};
  private static final double[] DRAG = {1.56, 1.384, 1.368, 1.306, 1.235, 1.169, 1.108};

  private VerticalAutorotation() {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    Source chapter12 = Sources.LEISHMAN.at("chapter 12: CD = 1.25 predicts Vd/vh = 1.79");
    checks.add(
        chapter12
            .published("disc drag coefficient at z = -1.79", "CD", "1")
            .as(Obtained.PRINTED)
            .near(
                1.25,
                0.009,
                Autorotation.discDragCoefficient(-1.79),
                "The printed speed has three digits: 4 / 1.785^2 to 4 / 1.795^2 is 1.241 to 1.255."));
    double[] drag = Arrays.stream(AXIAL).map(Autorotation::discDragCoefficient).toArray();
    double worst = ErrorBudget.of(DRAG, drag).largest();
    checks.add(
        chapter12
            .at("chapter 12: CD = 4 / (Vd/vh)^2")
            .closedForm("disc drag coefficient 4 / z^2 at seven speeds", "largest error of CD", "1")
            .atMost(0.0026, worst, "Values given with three or four digits, 1.56 the shortest."));
    double ideal = Autorotation.axialSpeed(models.ring(), 0).orElse(Double.NaN);
    Source johnson =
        Sources.MOMENTUM_THEORY.at("section 3: autorotation at z = -1.7 to -1.9, CD 1.1 to 1.3");
    checks.add(
        johnson
            .published("ideal autorotation of the ring-state model", "z where z + v = 0", "1")
            .calibration()
            .within(
                PublishedRanges.AUTOROTATION.low(),
                PublishedRanges.AUTOROTATION.high(),
                ideal,
                "Published range for real rotors."));
    checks.add(
        johnson
            .published(
                "disc drag coefficient of the ring-state model's ideal autorotation", "CD", "1")
            .calibration()
            .within(1.1, 1.3, Autorotation.discDragCoefficient(ideal), "Published range."));
    for (Craft craft : Craft.all(models)) {
      double real = real(craft, models.ring());
      checks.add(
          johnson
              .published(
                  "vertical autorotation of the demo craft " + craft.name(),
                  "z where the rotor takes no power",
                  "1")
              .validation()
              .within(-1.9, -1.7, real, "Published range for real rotors.")
              .butDiffers(-2.01, -1.95, TEXT.say("craft-differ")));
    }
    checks.addAll(MeasuredAutorotation.checks(models));
    return TEXT.section(
        "autorotation", List.of(TEXT.figure("autorotation-flow", () -> plot(models))), checks);
  }

  /** The axial speed, in hover units, at which thrust and profile power together are zero. */
  private static double real(Craft craft, InflowModel inflow) {
    double thrust = craft.motion().craft().weight();
    double vh = craft.hoverInduced(thrust);
    Rotor rotor = craft.motion().craft().rotor();
    double tip = craft.si(Rotor.TIP_SPEED);
    double loading =
        thrust / (Craft.density() * craft.area() * tip * tip * craft.si(Rotor.SOLIDITY));
    double profile = rotor.bladeDrag().profilePower(Craft.density(), tip, 0, loading);
    return new BrentSolver(1e-12)
        .solve(
            200,
            z -> {
              double share = inflow.lossShare(0, z);
              double losses = inflow.ring().losses() * share * vh;
              return rotor.thrustPower(thrust, z * vh, inflow.induced(0, z) * vh, share, losses)
                  + profile;
            },
            -2.6,
            -1.5);
  }

  private static Graph plot(Models models) {
    return Graph.of("axial speed z / vh", "total inflow w / vh")
        .x(-2.4, -1.4)
        .y(-1.2, 1.5)
        .shade(-1.9, -1.7, -1.2, 1.5, 236)
        .line(Pens.RULE, new double[] {-2.4, -1.4}, new double[] {0, 0})
        .curve("quartic, k = 1", Pens.DASHED, -2, -1.4, z -> models.quartic(1).total(0, z))
        .curve("two segments, k = 1", Pens.DOTTED, -2, -1.4, z -> models.twoSegment(1).total(0, z))
        .curve("cubic bridge", Pens.DASH_DOT, -1.999, -1.4, z -> models.cubic().total(0, z))
        .curve("ring-state model", Pens.THICK, z -> models.ring().total(0, z))
        .curve("windmill branch", Pens.SOLID, -2.4, -2, z -> z + PublishedFits.windmill(z))
        .label("published", -1.8, 1.3)
        .label("flow up through the disc", -2.25, -0.1)
        .label("flow down through the disc", -2.25, 0.12);
  }
}
