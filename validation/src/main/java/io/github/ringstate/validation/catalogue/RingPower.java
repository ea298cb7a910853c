package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.study.model.PublishedRange;
import io.github.ringstate.study.model.PublishedRanges;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What thrust takes of power in vertical descent, losses included. */
final class RingPower {

  private static final Prose TEXT = Prose.of(RingPower.class);

  private static final double FACTOR = 1.15;
  private static final double[] WITHIN = {-0.5, -1.0, -1.45};

  private RingPower() {}

  static Section section(Models models) {
    InflowModel ring = models.ring();
    List<Check> checks = new ArrayList<>();
    Craft craft = Craft.of(models, DemoCraft.TRAINER, ring);
    for (int i = 0; i < WITHIN.length; i++) {
      double at = WITHIN[i];
      PublishedRange range = PublishedRanges.POWER.get(i);
      Check check =
          Sources.LEISHMAN
              .at("chapter 2: between the quartic and the two-segment fit")
              .published(
                  String.format(Locale.ROOT, "total inflow with its losses at z = %.2f", at),
                  "power of thrust over T vh",
                  "1")
              .calibration()
              .within(
                  range.low(),
                  range.high(),
                  withLosses(ring, at),
                  "Between the two published fits at k = 1.15.");
      checks.add(at > -1.4 ? check : check.butDiffers(1.37, 1.42, TEXT.say("exit-differs")));
    }
    double vh = craft.hoverInduced(DemoCraft.TRAINER.weight());
    Motion descent = craft.vertical(-vh);
    double thrust = descent.loads().thrust();
    double own = craft.hoverInduced(thrust);
    double x = descent.loads().edgewise() / own;
    double z = descent.loads().axial() / own;
    double share = ring.lossShare(x, z);
    double losses = (1 - share) * ring.induced(x, z) + share;
    checks.add(
        Sources.OWN_FORMULATION
            .at("z + v + (k - 1) [(1 - s) v + g s], g = 1")
            .closedForm("power of thrust in a flown descent at z = -1", "power over T vh", "1")
            .near(
                z + ring.induced(x, z) + (FACTOR - 1) * losses,
                1e-6,
                (descent.loads().rotorPower() - descent.loads().profilePower()) / (thrust * own),
                "Steady flight, so the induced velocity is the model's; the trim's 1e-9."));
    return TEXT.section(
        "ring-power", List.of(TEXT.figure("ring-power", () -> plot(models))), checks);
  }

  /** Power of thrust over T vh with the model's losses. */
  private static double withLosses(InflowModel ring, double z) {
    Rotor rotor = new Rotor(DemoCraft.TRAINER.numbers());
    double share = ring.lossShare(0, z);
    return rotor.thrustPower(1, z, ring.induced(0, z), share, ring.ring().losses() * share);
  }

  private static Graph plot(Models models) {
    double[] at = MeasuredDescent.descents();
    double[] power = MeasuredDescent.powers();
    return Graph.of("axial speed z / vh", "power over hover")
        .x(-1.7, 0)
        .y(0, 1.4)
        .curve("quartic, k = 1.15", Pens.DASHED, z -> models.quartic(FACTOR).total(0, z) / FACTOR)
        .curve(
            "two segments, k = 1.15",
            Pens.DOTTED,
            z -> models.twoSegment(FACTOR).total(0, z) / FACTOR)
        .curve("ring-state model", Pens.THICK, z -> withLosses(models.ring(), z) / FACTOR)
        .curve("its mean inflow alone", Pens.SOLID, z -> withLosses(models.ring(), z, 0) / FACTOR)
        .points("measured, no twist", Pens.CIRCLE, at, power);
  }

  private static double withLosses(InflowModel ring, double z, double losses) {
    double share = ring.lossShare(0, z);
    return z + ring.induced(0, z) + (FACTOR - 1) * ((1 - share) * ring.induced(0, z) + losses);
  }
}
