package io.github.ringstate.instructor.fly;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.Situation;
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
    FlyFacts facts = FlyFacts.of(report.request(), report.flown(), units);
    blocks.add(new Sheet.Terms(heading(facts)));
    if (report.request().recovery().isMistaken()) {
      blocks.add(new Sheet.Paragraph(NotAWayOut.TEXT));
    }
    blocks.add(new Sheet.Heading("Events"));
    blocks.add(eventful ? events() : new Sheet.Paragraph(FlyMessages.SAY.noEvents()));
    blocks.add(new Sheet.Heading("Time history"));
    blocks.add(samples());
    blocks.add(new Sheet.Terms(FlyMessages.SAY.definitions(facts)));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private List<Term> heading(FlyFacts facts) {
    FlyRequest request = report.request();
    List<Term> terms =
        new ArrayList<>(
            Situation.of(request.conditions().craft(), request.approach(), units).terms());
    terms.addAll(request.conditions().terms(units));
    terms.addAll(FlyMessages.SAY.outcome(facts));
    return terms;
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
    int decimals = Decimals.decimalsOf(report.request().step());
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
        Decimals.fixed(sample.time(), decimals),
        units.length(sample.height()),
        Decimals.fixed(units.speed().fromSi(sample.groundSpeed()), 1),
        Decimals.fixed(units.speed().fromSi(sample.airspeed()), 1),
        units.fineVerticalSpeed(sample.verticalSpeed()),
        Decimals.fixed(Unit.DEGREE.fromSi(sample.pitch()), 1),
        Decimals.fixed(Unit.DEGREE.fromSi(sample.bank()), 1),
        Decimals.fixed(Unit.DEGREE.fromSi(sample.collective()), 1),
        Decimals.fixed(Unit.PERCENT.fromSi(sample.rotorSpeed()), 0),
        Decimals.fixed(Unit.PERCENT.fromSi(sample.power()), 0),
        Decimals.fixed(sample.inducedOverHover(), 2),
        Decimals.fixed(sample.axialOverHover(), 2),
        Decimals.fixed(sample.edgewiseOverHover(), 2),
        sample.phase());
  }
}
