package io.github.ringstate.instructor.fly;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** A flight laid out for people: what was flown, what came of it, the events, the samples. */
final class FlySheet {

  private final FlyReport report;
  private final UnitSystem units;

  private FlySheet(FlyReport report, UnitSystem units) {
    this.report = report;
    this.units = units;
  }

  static Sheet of(FlyReport report, UnitSystem units) {
    return new FlySheet(report, units).sheet();
  }

  private Sheet sheet() {
    boolean eventful = !report.flown().outcome().occurrences().isEmpty();
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Vortex ring state: one flight"));
    blocks.add(new Sheet.Terms(heading()));
    if (report.request().recovery().isMistaken()) {
      blocks.add(new Sheet.Paragraph(NotAWayOut.TEXT));
    }
    blocks.add(new Sheet.Heading("Events"));
    blocks.add(
        eventful ? events() : new Sheet.Paragraph("None: the pilot had nothing to recover from."));
    blocks.add(new Sheet.Heading("Time history"));
    blocks.add(samples());
    blocks.add(new Sheet.Terms(FlyTerms.forPeople(report, units)));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private List<Term> heading() {
    FlyRequest request = report.request();
    Approach approach = request.approach();
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term(
            "Craft",
            request.conditions().craft().name()
                + ": "
                + request.conditions().craft().description()));
    terms.add(new Term("Entry", approach.kind().label() + ": " + approach.description(units)));
    terms.add(new Term("Note", approach.kind().remark()));
    terms.add(new Term("Wind", approach.wind(units)));
    terms.add(new Term("Ground", approach.ground(units)));
    terms.addAll(request.conditions().terms(units));
    terms.add(
        new Term(
            "Recovery",
            request.recovery().shown()
                + (report.flown().outcome().ending() == Ending.NO_ONSET
                    ? ", never begun: "
                    : ", begun " + Decimals.brief(request.delayS()) + " s after onset: ")
                + request.recovery().description(request.conditions().craft().sense())));
    terms.add(new Term("Outcome", outcome(report.flown().outcome())));
    return terms;
  }

  private String outcome(Outcome outcome) {
    return switch (outcome.ending()) {
      case ARRESTED ->
          "arrested "
              + Decimals.fixed(outcome.timeToArrest().getAsDouble(), 1)
              + " s after onset, having lost "
              + units.lengthInWords(outcome.altitudeLoss().getAsDouble())
              + "; "
              + peak(outcome);
      case GROUND ->
          "the craft reaches the ground at "
              + fine(outcome.impactSpeed().getAsDouble())
              + "; "
              + peak(outcome);
      case NOT_ARRESTED -> "the descent was not arrested; " + peak(outcome);
      case NO_ONSET -> "the flight did not enter the ring state";
    };
  }

  private String peak(Outcome outcome) {
    return "greatest rate of descent " + fine(outcome.peakDescent().getAsDouble());
  }

  private String fine(double verticalSpeed) {
    return units.fineVerticalSpeed(verticalSpeed) + " " + units.verticalSpeed().symbol();
  }

  private Sheet.Grid events() {
    return new Sheet.Grid(
        List.of(
            GridColumn.left("event"),
            GridColumn.right("time", "s"),
            GridColumn.right("height", units.length().symbol()),
            GridColumn.right("v/s", units.verticalSpeed().symbol())),
        report.flown().outcome().occurrences().stream()
            .map(
                event ->
                    List.of(
                        event.kind().label(),
                        Decimals.fixed(event.time(), 1),
                        units.length(event.height()),
                        units.fineVerticalSpeed(event.verticalSpeed())))
            .toList());
  }

  private Sheet.Grid samples() {
    int decimals = Decimals.decimalsOf(report.request().stepS());
    return new Sheet.Grid(
        List.of(
            GridColumn.right("time", "s"),
            GridColumn.right("height", units.length().symbol()),
            GridColumn.right("ground", units.speed().symbol()),
            GridColumn.right("air", units.speed().symbol()),
            GridColumn.right("v/s", units.verticalSpeed().symbol()),
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

  private List<String> line(Sample sample, int decimals) {
    return List.of(
        Decimals.fixed(sample.timeS(), decimals),
        Decimals.fixed(length(sample.heightFt()), 0),
        Decimals.fixed(speed(sample.groundSpeedKt()), 1),
        Decimals.fixed(speed(sample.airspeedKt()), 1),
        units.fineVerticalSpeed(Unit.FOOT_PER_MINUTE.toSi(sample.verticalSpeedFpm())),
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

  private double length(double feet) {
    return units.length().fromSi(Unit.FOOT.toSi(feet));
  }

  private double speed(double knots) {
    return units.speed().fromSi(Unit.KNOT.toSi(knots));
  }
}
