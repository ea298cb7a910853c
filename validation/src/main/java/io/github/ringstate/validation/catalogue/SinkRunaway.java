package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.study.model.PublishedRanges;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ErrorBudget;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The runaway of the rate of descent at constant collective. */
final class SinkRunaway {

  private static final Prose TEXT = Prose.of(SinkRunaway.class);

  private static final Source REQUIRED =
      Sources.REQUIREMENT.at(
          "growth of the rate of descent at constant collective, light helicopter");

  private SinkRunaway() {}

  static Section section(Models models) {
    Descent ring = descent(models, models.ring());
    Descent smooth = descent(models, models.smooth());
    Descent again =
        Descent.fly(models, DemoCraft.TRAINER, models.ring(), Propagators.extrapolation(1e-10));
    double worst = ErrorBudget.of(again.sink(), ring.sink()).largest();
    return TEXT.section(
        "runaway",
        List.of(TEXT.figure("runaway", () -> plot(ring, smooth))),
        List.of(
            required("time from 400 to 2,000 ft/min", "time", "s")
                .within(
                    PublishedRanges.RUNAWAY.low(),
                    PublishedRanges.RUNAWAY.high(),
                    ring.reaches(2000) - ring.reaches(400),
                    "Required of the model; the order of magnitude is what test pilots report. No"
                        + " published time history was at hand."),
            required("greatest downward acceleration", "acceleration", "m/s2")
                .within(1.5, 3, ring.fastestGrowth(), "Required of the model; no published value."),
            required("rate of descent settles in the turbulent wake state", "-z at the end", "1")
                .within(
                    1.45,
                    1.88,
                    ring.settled(),
                    "Between the end of the fold and autorotation. Required: near 1.6."),
            Sources.EXTRAPOLATION
                .secondMethod(
                    "the runaway by another integrator",
                    "largest difference of the rate of descent over 60 s",
                    "ft/min")
                .atMost(
                    0.01,
                    Unit.FOOT_PER_MINUTE.fromSi(worst),
                    "Both integrators run at 1e-9 or finer; an unstable flow enlarges their errors."),
            Sources.MOMENTUM_THEORY
                .at("without d(z + v)/dz < 0 a descent has one steady rate")
                .closedForm("no fold, no runaway: smooth momentum theory", "-z at the end", "1")
                .within(
                    0.1,
                    1.0,
                    smooth.settled(),
                    "With the same collective a damped rotor settles at a slow descent.")));
  }

  private static Descent descent(Models models, InflowModel inflow) {
    return Descent.fly(models, DemoCraft.TRAINER, inflow, Propagators.precise());
  }

  private static Question required(String name, String quantity, String unit) {
    return REQUIRED.commonPractice(name, quantity, unit).calibration();
  }

  private static Graph plot(Descent ring, Descent smooth) {
    return Graph.of("time since the collective was lowered, s", "rate of descent, ft/min")
        .x(0, 30)
        .y(0, 2600)
        .shade(0, 30, 400, 2000, 238)
        .line("ring-state model", Pens.THICK, thinned(ring.time()), thinned(feet(ring)))
        .line("smooth momentum theory", Pens.DASHED, thinned(smooth.time()), thinned(feet(smooth)));
  }

  /** Every tenth value, one in 0.2 s. */
  private static double[] thinned(double[] values) {
    return IntStream.range(0, (values.length + 9) / 10).mapToDouble(i -> values[10 * i]).toArray();
  }

  private static double[] feet(Descent descent) {
    return Arrays.stream(descent.sink()).map(Unit.FOOT_PER_MINUTE::fromSi).toArray();
  }
}
