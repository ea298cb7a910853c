package io.github.ringstate.instructor.fly;

import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.report.Caution;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Sheet;
import io.github.ringstate.instructor.report.Sheet.GridColumn;
import io.github.ringstate.instructor.report.Term;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** A flight laid out for people: what was flown, what came of it, the events, the samples. */
final class FlySheet {

  private FlySheet() {}

  static Sheet of(FlyReport report) {
    return new Sheet(
        List.of(
            new Sheet.Title("Vortex ring state: one flight"),
            new Sheet.Terms(heading(report)),
            new Sheet.Heading("Events"),
            events(report),
            new Sheet.Heading("Time history"),
            samples(report),
            new Sheet.Terms(FlyTerms.forPeople(report)),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  private static List<Term> heading(FlyReport report) {
    FlyRequest request = report.request();
    Approach approach = request.approach();
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term(
            "Craft",
            request.conditions().craft().name()
                + ": "
                + request.conditions().craft().description()));
    terms.add(new Term("Entry", approach.kind().label() + ": " + approach.kind().description()));
    terms.add(new Term("Wind", approach.wind()));
    terms.addAll(request.conditions().terms());
    terms.add(
        new Term(
            "Recovery",
            request.recovery().label()
                + ", begun "
                + Decimals.brief(request.delayS())
                + " s after onset: "
                + request.recovery().description(request.conditions().craft().sense())));
    terms.add(new Term("Outcome", outcome(report.flown().outcome())));
    return terms;
  }

  private static String outcome(Outcome outcome) {
    return switch (outcome.ending()) {
      case ARRESTED ->
          "arrested "
              + Decimals.fixed(outcome.timeToArrest().getAsDouble(), 1)
              + " s after onset, having lost "
              + Decimals.fixed(Unit.FOOT.fromSi(outcome.altitudeLoss().getAsDouble()), 0)
              + " ft; "
              + peak(outcome);
      case GROUND ->
          "the craft reaches the ground at "
              + Decimals.fixed(Unit.FOOT_PER_MINUTE.fromSi(outcome.impactSpeed().getAsDouble()), 0)
              + " ft/min; "
              + peak(outcome);
      case NOT_ARRESTED -> "the descent was not arrested; " + peak(outcome);
      case NO_ONSET -> "the flight did not enter the ring state";
    };
  }

  private static String peak(Outcome outcome) {
    return "greatest rate of descent "
        + Decimals.fixed(Unit.FOOT_PER_MINUTE.fromSi(outcome.peakDescent().getAsDouble()), 0)
        + " ft/min";
  }

  private static Sheet.Grid events(FlyReport report) {
    return new Sheet.Grid(
        List.of(
            GridColumn.left("event"),
            GridColumn.right("time", "s"),
            GridColumn.right("height", "ft"),
            GridColumn.right("v/s", "ft/min")),
        report.flown().outcome().occurrences().stream()
            .map(
                event ->
                    List.of(
                        event.kind().label(),
                        Decimals.fixed(event.time(), 1),
                        Decimals.fixed(Unit.FOOT.fromSi(event.height()), 0),
                        Decimals.fixed(Unit.FOOT_PER_MINUTE.fromSi(event.verticalSpeed()), 0)))
            .toList());
  }

  private static Sheet.Grid samples(FlyReport report) {
    int decimals = Decimals.decimalsOf(report.request().stepS());
    return new Sheet.Grid(
        List.of(
            GridColumn.right("time", "s"),
            GridColumn.right("height", "ft"),
            GridColumn.right("ground", "kt"),
            GridColumn.right("air", "kt"),
            GridColumn.right("v/s", "ft/min"),
            GridColumn.right("pitch", "deg"),
            GridColumn.right("bank", "deg"),
            GridColumn.right("coll.", "deg"),
            GridColumn.right("rotor", "%"),
            GridColumn.right("power", "%"),
            GridColumn.right("ind.", "1"),
            GridColumn.right("axial", "1"),
            GridColumn.right("edge", "1"),
            GridColumn.left("phase")),
        report.flown().samples().stream().map(sample -> line(sample, decimals)).toList());
  }

  private static List<String> line(Sample sample, int decimals) {
    return List.of(
        Decimals.fixed(sample.timeS(), decimals),
        Decimals.fixed(sample.heightFt(), 0),
        Decimals.fixed(sample.groundSpeedKt(), 1),
        Decimals.fixed(sample.airspeedKt(), 1),
        Decimals.fixed(sample.verticalSpeedFpm(), 0),
        Decimals.fixed(sample.pitchDeg(), 1),
        Decimals.fixed(sample.bankDeg(), 1),
        Decimals.fixed(sample.collectiveDeg(), 1),
        Decimals.fixed(sample.rotorSpeedPct(), 0),
        Decimals.fixed(sample.powerPct(), 0),
        Decimals.fixed(sample.inducedOverHover(), 2),
        Decimals.fixed(sample.axialOverHover(), 2),
        Decimals.fixed(sample.edgewiseOverHover(), 2),
        sample.phase());
  }
}
