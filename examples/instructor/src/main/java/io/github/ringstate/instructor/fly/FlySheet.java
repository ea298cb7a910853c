package io.github.ringstate.instructor.fly;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.report.TextColumn;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A flight laid out for people: what was flown, what came of it, the events, the samples. */
record FlySheet(FlyReport report, UnitSystem units) {

  Sheet sheet() {
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
    return TextColumn.grid(
        List.of(
            TextColumn.left(event -> event.kind().label(), "event"),
            TextColumn.right(event -> Decimals.fixed(event.time(), 1), "time", "s"),
            TextColumn.right(
                event -> units.length(event.height()), "height", units.length().symbol()),
            TextColumn.right(
                event -> units.fineVerticalSpeed(event.verticalSpeed()),
                "v/s",
                units.verticalSpeed().symbol())),
        report.flown().outcome().occurrences());
  }

  private Sheet.Grid samples() {
    int decimals = Decimals.decimalsOf(report.request().step());
    return TextColumn.grid(
        List.of(
            number("time", "s", Unit.SECOND, decimals, Sample::time),
            TextColumn.right(
                sample -> units.length(sample.height()), "height", units.length().symbol()),
            number("ground", units.speed().symbol(), units.speed(), 1, Sample::groundSpeed),
            number("air", units.speed().symbol(), units.speed(), 1, Sample::airspeed),
            TextColumn.right(
                sample -> units.fineVerticalSpeed(sample.verticalSpeed()),
                "v/s",
                units.verticalSpeed().symbol()),
            number("pitch", "deg", Unit.DEGREE, 1, Sample::pitch),
            number("bank", "deg", Unit.DEGREE, 1, Sample::bank),
            number("coll.", "deg", Unit.DEGREE, 1, Sample::collective),
            number("rotor", "%", Unit.PERCENT, 0, Sample::rotorSpeed),
            number("power", "%", Unit.PERCENT, 0, Sample::power),
            number("ind.", "1", Unit.ONE, 2, Sample::inducedOverHover),
            number("axial", "1", Unit.ONE, 2, Sample::axialOverHover),
            number("edge", "1", Unit.ONE, 2, Sample::edgewiseOverHover),
            TextColumn.left(Sample::phase, "phase")),
        report.flown().samples());
  }

  private static TextColumn<Sample> number(
      String head, String symbol, Unit unit, int decimals, ToDoubleFunction<Sample> value) {
    return TextColumn.right(
        sample -> Decimals.fixed(unit.fromSi(value.applyAsDouble(sample)), decimals), head, symbol);
  }
}
