package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Altitude losses of the demo craft beside what is published and practised. */
final class AltitudeLosses {

  private static final Prose TEXT = Prose.of(AltitudeLosses.class);

  private static final double PROMPT = 0.5;
  private static final double LATE = 6;
  private static final String AT_ONCE =
      "Common practice. Prompt is half a second after onset here.";

  private AltitudeLosses() {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    for (Helicopter craft : DemoCraft.ALL) {
      prompt(models, checks, craft);
      traditional(models, checks, craft);
      late(models, checks, craft);
    }
    checks.addAll(AccidentHeights.checks(models));
    return TEXT.section(
        "altitude-losses", List.of(TEXT.figure("losses", () -> plot(models))), checks);
  }

  private static void prompt(Models models, List<Check> checks, Helicopter craft) {
    boolean large = craft.equals(DemoCraft.HEAVY) || craft.equals(DemoCraft.TWIN);
    double forward = feet(models, craft, new Forward(), PROMPT);
    double lateral = feet(models, craft, new Lateral(), PROMPT);
    Check nose =
        prompt("forward", craft, Sources.INSTRUCTORS.at("prompt forward, light helicopter"))
            .within(50, 80, forward, AT_ONCE);
    checks.add(
        large ? heavier(nose, 80, 160) : nose.butDiffers(80, 100, TEXT.say("forward-differs")));
    Check side =
        prompt(
                "lateral",
                craft,
                Sources.INSTRUCTORS.at("20 to 50 ft; FAA-H-8083-21B is said to give 20 to 30 ft"))
            .within(20, 50, lateral, AT_ONCE);
    checks.add(
        craft.equals(DemoCraft.TRAINER) || craft.equals(DemoCraft.HEAVY)
            ? side.butDiffers(50, 65, TEXT.say("lateral-differs"))
            : side);
    checks.add(
        Sources.INSTRUCTORS
            .at("the reason for which the lateral recovery is taught")
            .commonPractice(
                "lateral recovery loses less than forward, 0.5 s after onset, " + craft.name(),
                "lateral over forward loss",
                "1")
            .calibration()
            .within(0.2, 0.7, lateral / forward, "20 to 50 ft over 50 to 80 ft, taken loosely."));
  }

  private static Question prompt(String recovery, Helicopter craft, Source source) {
    return source
        .commonPractice("prompt " + recovery + " recovery, " + craft.name(), "altitude loss", "ft")
        .calibration();
  }

  /** Statements on light helicopters, beside a craft that is not light. */
  private static Check heavier(Check check, double low, double high) {
    return check.butDiffers(low, high, TEXT.say("heavier-craft-differ"));
  }

  private static void traditional(Models models, List<Check> checks, Helicopter craft) {
    Source source =
        Sources.INSTRUCTORS.at("traditional recovery: roughly 100 to 500 ft by different authors");
    for (double delay : new double[] {1.5, 3, LATE}) {
      Check check =
          source
              .published(
                  "traditional recovery " + delay + " s after onset, " + craft.name(),
                  "altitude loss",
                  "ft")
              .as(Obtained.PRINTED)
              .validation()
              .within(
                  100,
                  500,
                  feet(models, craft, new Forward(), delay),
                  "The span of what different authors state.");
      boolean large = craft.equals(DemoCraft.HEAVY) || craft.equals(DemoCraft.TWIN);
      checks.add(large && delay == LATE ? heavier(check, 500, 700) : check);
    }
  }

  private static void late(Models models, List<Check> checks, Helicopter craft) {
    double collective = feet(models, craft, new CollectiveOnly(), LATE);
    double forward = feet(models, craft, new Forward(), LATE);
    Check check =
        Sources.ARMY
            .at("a large application of collective may arrest rapid descent only early")
            .published(
                "collective alone is no late recovery, " + craft.name(),
                "forward loss over loss by collective alone, 6 s after onset",
                "1")
            .as(Obtained.PRINTED)
            .validation()
            .within(
                0,
                0.5,
                Double.isNaN(collective) ? 0 : forward / collective,
                "Useless is taken as twice the loss of the forward recovery, or never arrested.");
    checks.add(
        !craft.equals(DemoCraft.UTILITY)
            ? check
            : check.butDiffers(0.51, 2.5, TEXT.say("collective-differs")));
  }

  private static double feet(Models models, Helicopter declared, Recovery recovery, double delay) {
    Outcome outcome =
        Craft.encounter(models, declared)
            .withAir(models.air(0))
            .withRecovery(recovery)
            .withDelay(delay)
            .fly();
    return Unit.FOOT.fromSi(outcome.altitudeLoss().orElse(Double.NaN));
  }

  private static Graph plot(Models models) {
    double[] delays = Grid.spaced(0, 6, 49);
    Graph plot =
        Graph.of("delay from onset to the pilot's action, s", "altitude loss, ft")
            .x(0, 6)
            .y(0, 520)
            .shade(1, 6, 100, 500, 240)
            .shade(0, 1, 50, 80, 222)
            .shade(0, 1, 20, 50, 202);
    curve(plot, models, "forward", Pens.THICK, new Forward(), delays);
    curve(plot, models, "lateral", Pens.DASHED, new Lateral(), delays);
    curve(
        plot, models, "collective alone: not a way out", Pens.DOTTED, new CollectiveOnly(), delays);
    return plot.label("traditional, stated 100 to 500 ft", 2.6, 470);
  }

  private static void curve(
      Graph plot, Models models, String name, Pen line, Recovery recovery, double[] delays) {
    double[] losses =
        Arrays.stream(delays)
            .map(d -> feet(models, DemoCraft.TRAINER, recovery, d))
            .map(loss -> loss < 1000 ? loss : 1000)
            .toArray();
    plot.line(name, line, delays, losses);
  }
}
