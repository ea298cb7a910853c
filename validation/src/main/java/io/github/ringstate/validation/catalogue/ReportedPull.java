package io.github.ringstate.validation.catalogue;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import java.util.Arrays;
import java.util.List;

/** Power pulled late on an approach: what it takes to meet an official report. */
final class ReportedPull {

  private static final Prose TEXT = Prose.of(ReportedPull.class);

  private static final Source REPORT =
      new Source(
          "Air Accidents Investigation Branch",
          "aircraft accident report",
          "1/2016",
          "2016",
          "a heavy twin: 32 kt and 1,000 ft/min at 240 ft, nose up 20 degrees; torque at 115 per"
              + " cent and 1,800 ft/min at 100 ft; as told by a magazine");

  /** Power to spare over the hover at 100 per cent torque. */
  private static final double[] SPARE = {0, 5, 10, 15, 20, 25, 30, 35, 40};

  /** Airspeed at which the nose comes down, m/s: never. */
  private static final double NEVER = -10;

  private ReportedPull() {}

  static Section section(Models models) {
    Check small =
        question("10")
            .near(
                0,
                0.5,
                left(models, models.ring(), 10),
                "Not arrested means that no height is left. The report does not give the power that"
                    + " a hover would have left; 10 per cent is little for a heavy twin.");
    Check ample =
        question("40")
            .near(
                0,
                0.5,
                left(models, models.ring(), 40),
                "As above, with the power that the invented craft has to spare.")
            .butDiffers(30, 70, TEXT.say("ample-differs"));
    return TEXT.section(
        "reported-pull",
        List.of(TEXT.figure("reported-pull", () -> plot(models))),
        List.of(small, ample));
  }

  private static Question question(String spare) {
    return REPORT
        .published(
            "height left after the reported pull, " + spare + " per cent to spare", "height", "ft")
        .validation();
  }

  /** Height left, ft, when power to spare is a part of the hover's, in per cent. */
  private static double left(Models models, InflowModel inflow, double spare) {
    Air air = models.air(0);
    Craft hovering = Craft.of(models, DemoCraft.HEAVY, inflow);
    double power = hovering.vertical(0).loads().shaftPower() * (1 + spare / 100);
    Helicopter craft =
        models
            .craft(DemoCraft.HEAVY)
            .with(Helicopter.CONTINUOUS_POWER, 0.87 * Unit.KILOWATT.fromSi(power))
            .with(Helicopter.TAKE_OFF_POWER, Unit.KILOWATT.fromSi(power))
            .with(Helicopter.DRIVE_TRAIN_LIMIT, 115);
    return Unit.FOOT.fromSi(new LatePull(craft, air, inflow, NEVER).asReported().left());
  }

  private static InflowModel form(double losses, double dissolving) {
    return RingStateInflow.standard()
        .with(RingStateInflow.LOSSES, losses)
        .with(RingMemory.DISSOLVING_TIME, dissolving);
  }

  private static Graph plot(Models models) {
    Graph plot =
        Graph.of("power to spare, per cent of the hover", "height left, ft").x(0, 40).y(0, 100);
    line(plot, "model", Pens.THICK, models, models.ring());
    line(plot, "no losses, no memory", Pens.DASHED, models, form(0, 0));
    line(plot, "twice the losses and the time", Pens.DOTTED, models, form(2, 7.2));
    return plot;
  }

  private static void line(Graph plot, String name, Pen pen, Models models, InflowModel inflow) {
    plot.line(
        name, pen, SPARE, Arrays.stream(SPARE).map(spare -> left(models, inflow, spare)).toArray());
  }
}
