package io.github.ringstate.instructor.review;

import io.github.ringstate.encounter.RecordedFlight;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.recording.RecordedQuantity;
import io.github.ringstate.files.recording.Repair;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ConditionCells;
import io.github.ringstate.instructor.review.ModelledDescent.Losses;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.Estimate;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Printable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A recorded flight, reviewed.
 *
 * @param debrief what it shows
 */
record ReviewReport(Debrief debrief) implements Printable {

  private static final List<Column<Repair>> REPAIRS =
      List.of(
          new Column<>("repair", repair -> Cell.text(repair.kind().label())),
          new Column<>(
              "quantity",
              repair -> Cell.text(repair.quantity().map(RecordedQuantity::key).orElse(""))),
          new Column<>("count", repair -> Cell.number(repair.count(), 0)),
          new Column<>("first_s", repair -> Cell.number(repair.first(), 1)),
          new Column<>("last_s", repair -> Cell.number(repair.last(), 1)));

  private static final List<Column<FlownDescent>> MORE =
      List.of(
          new Column<>(
              "onset_time_sd_s", row -> Cell.number(row.found().onsetTime().deviation(), 2)),
          new Column<>("sink_time_s", row -> time(row.found().sinkTime())),
          new Column<>("arrest_time_s", row -> time(row.found().arrestTime())),
          new Column<>(
              "model_begins",
              row ->
                  Cell.text(
                      row.model()
                          .flight()
                          .map(flight -> flight.encounter().entry().name())
                          .orElse(""))),
          new Column<>("model_recovery", row -> Cell.text(row.model().recovery().name())),
          new Column<>("model_delay_s", row -> Cell.number(row.model().delay(), 2)),
          new Column<>("model_loss_ft", row -> Cell.in(Unit.FOOT, row.model().losses().flown())),
          new Column<>(
              "model_loss_1_s_more_ft", row -> Cell.in(Unit.FOOT, row.model().losses().oneMore())),
          new Column<>(
              "model_loss_1_s_more_sd_ft", row -> deviation(row.model().losses(), Losses::oneMore)),
          new Column<>(
              "model_loss_2_s_more_ft", row -> Cell.in(Unit.FOOT, row.model().losses().twoMore())),
          new Column<>(
              "model_loss_2_s_more_sd_ft",
              row -> deviation(row.model().losses(), Losses::twoMore)));

  private static Cell deviation(Losses losses, Function<Losses, OptionalDouble> later) {
    return Cell.in(Unit.FOOT, losses.deviation(later.apply(losses)));
  }

  private static Cell time(Optional<Estimate> time) {
    return time.map(one -> Cell.number(one.value(), 2)).orElse(Cell.NOTHING);
  }

  private List<Column<FlownDescent>> columns() {
    return List.of(
        new Column<>("encounter", row -> Cell.number(row.number(), 0)),
        new Column<>("onset_time_s", row -> Cell.number(row.found().onsetTime().value(), 2)),
        new Column<>(
            "onset_height_ft",
            row -> Cell.in(Unit.FOOT, debrief.request().shown(row.found().onsetHeight()))),
        new Column<>("recognition_delay_s", row -> Cell.number(row.delay())),
        new Column<>(
            "altitude_loss_ft", row -> Cell.in(Unit.FOOT, row.found().altitudeLoss().value())),
        new Column<>(
            "altitude_loss_sd_ft",
            row -> Cell.in(Unit.FOOT, row.found().altitudeLoss().deviation())),
        new Column<>(
            "peak_descent_fpm",
            row -> Cell.in(Unit.FOOT_PER_MINUTE, row.found().peakDescent().value())),
        new Column<>("time_to_arrest_s", row -> Cell.number(row.timeToArrest())),
        new Column<>(
            "recovery",
            row -> row.recovery().map(Technique::name).map(Cell::text).orElse(Cell.NOTHING)),
        new Column<>("verdict", row -> Cell.text(row.found().verdict().label())));
  }

  @Override
  public String title() {
    return "review of a recorded flight";
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new ReviewSheet(debrief, units).sheet();
  }

  @Override
  public Page page(PageSettings settings) {
    return new ReviewPage(debrief, settings.units()).page();
  }

  @Override
  public Table<FlownDescent> table() {
    return new Table<>(columns(), debrief.descents());
  }

  @Override
  public Map<String, Cell> facts() {
    ReviewRequest request = debrief.request();
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.put("recording", Cell.text(request.name()));
    facts.put("invented", Cell.yesNo(request.invented()));
    facts.put("format", Cell.text(request.file().format().label()));
    facts.put("columns", Cell.text(request.file().columns().given()));
    facts.put("time_zero", Cell.text(request.file().start().map(Object::toString).orElse("")));
    facts.putAll(ConditionCells.facts(request.conditions(), true));
    facts.put("entry", Cell.text(request.entry().name()));
    facts.put("wind_source", Cell.text(request.wind().source()));
    facts.put("wind_from_deg", Cell.in(Unit.DEGREE, request.wind().wind().directionFrom()));
    facts.put("wind_kt", Cell.in(Unit.KNOT, request.wind().wind().speed()));
    facts.put("wind_sd_kt", Cell.in(Unit.KNOT, request.wind().deviation()));
    facts.put("lowest_ft", Cell.in(Unit.FOOT, request.shown(debrief.heights().getMin())));
    facts.put("highest_ft", Cell.in(Unit.FOOT, request.shown(debrief.heights().getMax())));
    facts.put("ground_ft", Cell.in(Unit.FOOT, request.ground()));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return ReviewMessages.SAY.dataDefinitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    tables.put("repairs", new Table<>(REPAIRS, debrief.repairs()));
    tables.put("encounters", table().with(MORE));
    return tables;
  }

  @Override
  public Map<String, Cell> settings() {
    return ResolvedSettings.of(
        debrief.descents().stream()
            .flatMap(descent -> descent.model().flight().stream())
            .map(RecordedFlight::encounter)
            .toList());
  }
}
