package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Source;
import java.util.List;

/** Where flights met the ring state, and the limits that were set before it. */
final class ReportedOnsets {

  private ReportedOnsets() {}

  static List<Check> checks(Models models) {
    HeaveDamping boundary = new HeaveDamping(models.ring());
    Source tiltrotor = HeldOut.source("tiltrotor-descent");
    Measured entry = Measured.of("tiltrotor-entry");
    Measured airspeed = Measured.of("tiltrotor-airspeed");
    double reach = boundary.reach().orElse(Double.NaN);
    Measured least = Measured.of("tiltrotor-least-rate");
    Measured warning = Measured.of("warning-rate");
    double twin =
        Unit.FOOT_PER_MINUTE.fromSi(
            -boundary.band(0).orElseThrow().onset()
                * Craft.of(models, DemoCraft.TWIN).motion().hoverInduced());
    Measured deepest = Measured.of("deepest-sink");
    double greatest =
        DemoCraft.ALL.stream()
            .map(craft -> Descent.fly(models, craft, models.ring(), Propagators.precise()))
            .mapToDouble(descent -> descent.settled() * descent.vh())
            .max()
            .orElseThrow();
    return List.of(
        entry.near(
            "onset at the tiltrotor's 16 kt, x = 0.42",
            "z",
            tiltrotor,
            boundary.band(0.418).orElseThrow().onset()),
        airspeed.near(
            "greatest airspeed beside the tiltrotor's 30 to 40 kt", "x", tiltrotor, reach),
        least
            .near(
                "onset at the tiltrotor's 30 kt, x = 0.78",
                "z",
                tiltrotor,
                boundary.band(Math.min(0.78, reach - 1e-6)).orElseThrow().onset())
            .butDiffers(-1.2, -0.75, Boundaries.TEXT.say("tiltrotor-differs")),
        warning
            .question(
                "a utility helicopter's limit comes before the onset of the twin",
                "onset rate over the limit",
                "1",
                Sources.UTILITY_MANUAL)
            .within(
                1,
                2,
                twin / warning.value(),
                "A limit lies before the onset, and not at less than half of it."),
        deepest.near(
            "greatest rate of descent at constant collective over all demo craft",
            "rate of descent",
            Sources.HANDBOOK,
            Unit.FOOT_PER_MINUTE.fromSi(greatest)));
  }
}
