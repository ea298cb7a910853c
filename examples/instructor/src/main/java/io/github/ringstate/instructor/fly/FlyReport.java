package io.github.ringstate.instructor.fly;

import io.github.ringstate.encounter.Occurrence;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ConditionCells;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.pilots.PilotFacts;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Printable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The time history of one flight.
 *
 * @param request what was asked for
 * @param flown the flight
 */
record FlyReport(FlyRequest request, FlownEncounter flown) implements Printable {

  private static final int RATIO_DECIMALS = 3;

  private static final List<Column<Occurrence>> EVENTS =
      List.of(
          new Column<>("event", event -> Cell.text(event.kind().name())),
          new Column<>("time_s", event -> Cell.number(event.time(), 2)),
          new Column<>("height_ft", event -> Cell.in(Unit.FOOT, event.height())),
          new Column<>(
              "vertical_speed_fpm", event -> Cell.in(Unit.FOOT_PER_MINUTE, event.verticalSpeed())));

  @Override
  public String title() {
    return "flight through the ring state";
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new FlySheet(this, units).sheet();
  }

  @Override
  public Page page(PageSettings settings) {
    return new ClassroomPage(request, flown, settings.units()).page();
  }

  @Override
  public Table<Sample> table() {
    int decimals = Decimals.decimalsOf(request.step());
    return new Table<>(
        List.of(
            new Column<>("time_s", sample -> Cell.number(sample.time(), decimals)),
            new Column<>("height_ft", sample -> Cell.in(Unit.FOOT, sample.height())),
            new Column<>("ground_speed_kt", sample -> Cell.in(Unit.KNOT, sample.groundSpeed())),
            new Column<>("airspeed_kt", sample -> Cell.in(Unit.KNOT, sample.airspeed())),
            new Column<>(
                "vertical_speed_fpm",
                sample -> Cell.in(Unit.FOOT_PER_MINUTE, sample.verticalSpeed())),
            new Column<>("pitch_deg", sample -> Cell.in(Unit.DEGREE, sample.pitch())),
            new Column<>("bank_deg", sample -> Cell.in(Unit.DEGREE, sample.bank())),
            new Column<>("collective_deg", sample -> Cell.in(Unit.DEGREE, sample.collective())),
            new Column<>("rotor_speed_pct", sample -> Cell.in(Unit.PERCENT, sample.rotorSpeed())),
            new Column<>("power_pct", sample -> Cell.in(Unit.PERCENT, sample.power())),
            new Column<>("induced_over_hover", sample -> ratio(sample.inducedOverHover())),
            new Column<>("axial_over_hover", sample -> ratio(sample.axialOverHover())),
            new Column<>("edgewise_over_hover", sample -> ratio(sample.edgewiseOverHover())),
            new Column<>("phase", sample -> Cell.text(sample.phase()))),
        flown.samples());
  }

  /** One decimal of a speed in hover induced velocities would be hundreds of feet per minute. */
  private static Cell ratio(double value) {
    return Cell.number(value, RATIO_DECIMALS);
  }

  @Override
  public Map<String, Cell> facts() {
    Conditions conditions = request.conditions();
    Outcome outcome = flown.outcome();
    Map<String, Cell> facts = ConditionCells.facts(conditions, true);
    facts.putAll(PilotFacts.of(request.approach()));
    facts.put("height_at_onset_ft", Cell.in(Unit.FOOT, request.approach().height()));
    facts.put("recovery", Cell.text(request.recovery().name()));
    facts.put("way_out", Cell.yesNo(request.recovery().wayOut()));
    facts.put("delay_s", Cell.given(request.delay()));
    facts.put("outcome", Cell.text(outcome.ending().label()));
    facts.put("altitude_loss_ft", Cell.in(Unit.FOOT, outcome.altitudeLoss()));
    facts.put("loss_after_recognition_ft", Cell.in(Unit.FOOT, outcome.lossAfterRecognition()));
    facts.put("peak_descent_fpm", Cell.in(Unit.FOOT_PER_MINUTE, outcome.peakDescent()));
    facts.put("time_to_arrest_s", Cell.number(outcome.timeToArrest()));
    facts.put("impact_speed_fpm", Cell.in(Unit.FOOT_PER_MINUTE, outcome.impactSpeed()));
    facts.put("sensitive", Cell.yesNo(flown.sensitive()));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return FlyMessages.SAY.dataDefinitions(FlyFacts.of(request, flown, UnitSystem.AVIATION));
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    tables.put("events", new Table<>(EVENTS, flown.outcome().occurrences()));
    tables.put("samples", table());
    return tables;
  }

  @Override
  public Map<String, Cell> settings() {
    return ResolvedSettings.of(List.of(request.flown()));
  }
}
